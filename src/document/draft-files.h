/* SPDX-License-Identifier: MIT */
#pragma once

/*
 * A draft is two files of one name: the job, and the URI of the saved file it is a
 * change of, which also carries the lock of the program that has it open.
 */
#define SW_DRAFT_JOB ".slope.json"
#define SW_DRAFT_ORIGIN ".origin"
