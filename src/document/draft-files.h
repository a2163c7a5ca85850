/* SPDX-License-Identifier: MIT */
#pragma once

/*
 * A draft is two files of one name: the job; and, a line each, the URI of the saved file it
 * is a change of and the digest of that file as it was known, either empty for none. The
 * second also carries the lock of the program that has the job open.
 */
#define SW_DRAFT_JOB ".slope.json"
#define SW_DRAFT_ORIGIN ".origin"
