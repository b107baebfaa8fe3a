#include "ui/style/theme.h"
