// A force and a length cannot be added.
#include "quantity/quantity.h"

using namespace treadle;

#ifdef MISTAKE
auto sum = us_tons(1.0) + inches(1.0);
#else
auto sum = us_tons(1.0) + kilonewtons(1.0);
#endif
