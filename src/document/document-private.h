/* SPDX-License-Identifier: MIT */
#pragma once

#include "disk-copy.h"

/** (transfer none) */
SwDiskCopy *sw_document_disk (SwDocument *document);
