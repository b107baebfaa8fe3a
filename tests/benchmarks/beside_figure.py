# SPDX-License-Identifier: MIT
"""The sketch FILE's parallelogram with matplotlib, as a floor for `tailpoint figure`: arrows, dashed sides, names
with values, an arc for each direction. beside_figure.py FILE OUT.svg"""

import json
import math
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
from matplotlib.patches import Arc

with open(sys.argv[1], encoding="utf-8") as file:
    sketch = json.load(file)
vectors = []
for force in sketch["forces"]:
    way = math.radians(force["direction"])
    vectors.append((force["name"], force["magnitude"] * math.cos(way), force["magnitude"] * math.sin(way)))
total = ("R", sum(x for _, x, _ in vectors), sum(y for _, _, y in vectors))

figure, axes = plt.subplots(figsize=(6.4, 4.8))
for name, x, y in vectors + [total]:
    size, way = math.hypot(x, y), math.degrees(math.atan2(y, x))
    axes.annotate("", (x, y), (0, 0), arrowprops={"arrowstyle": "-|>", "lw": 2})
    axes.text(x, y, f"{name} = {size:.0f} N")
    axes.add_patch(Arc((0, 0), size / 2, size / 2, theta1=min(0, way), theta2=max(0, way)))
    half = math.radians(way / 2)
    axes.text(size / 4 * math.cos(half), size / 4 * math.sin(half), f"{way:.1f}°")
for _, x, y in vectors:
    axes.plot([x, total[1]], [y, total[2]], "--")
axes.set_aspect("equal")
axes.axis("off")
figure.savefig(sys.argv[2])
