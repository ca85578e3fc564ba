#pragma once

// The restoration sheet: gather its facts, then fill a web page or draw a PDF from them.
#include "model/paper/draw_pdf.h"
#include "model/paper/fill_restoration.h"
#include "model/paper/gather_restoration.h"
