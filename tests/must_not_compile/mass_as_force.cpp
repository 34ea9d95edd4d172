// A mass is no force.
#include "quantity/quantity.h"

using namespace treadle;

#ifdef MISTAKE
Force capacity = quantity::pounds(90000.0);
#else
Force capacity = quantity::pounds_force(90000.0);
#endif
