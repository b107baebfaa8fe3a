// SPDX-License-Identifier: MIT
#include "ui/style/targets.h"

#include <QInputDevice>
#include <algorithm>

namespace tailpoint {

int targetSide() {
    constexpr int kPointer = 24, kFinger = 44;
    const auto devices = QInputDevice::devices();
    const bool touched = std::any_of(devices.begin(), devices.end(), [](const QInputDevice* device) {
        return device->type() == QInputDevice::DeviceType::TouchScreen;
    });
    return touched ? kFinger : kPointer;
}

} // namespace tailpoint
