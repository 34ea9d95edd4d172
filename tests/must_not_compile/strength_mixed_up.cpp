// The specified minimum cannot stand in for the careful upper bound.
#include "material/grade.h"

using namespace treadle;

#ifdef MISTAKE
material::UpperTensile strength = material::MinimumTensile{ksi(58.0)};
#else
material::UpperTensile strength = material::UpperTensile{ksi(80.0)};
#endif
