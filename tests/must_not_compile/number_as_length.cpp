// A bare number is no length: its unit has to be said.
#include "quantity/quantity.h"

using namespace treadle;

#ifdef MISTAKE
Length thickness = 0.375;
#else
Length thickness = inches(0.375);
#endif
