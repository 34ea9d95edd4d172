// A bend angle cannot be given where a length is asked for.
#include "quantity/quantity.h"

using namespace treadle;

#ifdef MISTAKE
Length radius = degrees(90.0);
#else
Length radius = inches(0.5);
#endif
