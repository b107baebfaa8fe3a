# SPDX-License-Identifier: MIT
"""The resultant of the sketch FILE's two forces with SymPy, as a floor for `tailpoint report`: the law of cosines
and the direction in symbols, then with numbers, a line each. beside_report.py FILE"""

import json
import sys

import sympy as sp

with open(sys.argv[1], encoding="utf-8") as file:
    first, second = json.load(file)["forces"]
p, q, alpha, beta = sp.symbols("P Q alpha beta", positive=True)
r = sp.sqrt(p**2 + q**2 - 2 * p * q * sp.cos(sp.pi - (alpha - beta)))
theta = sp.atan2(p * sp.sin(alpha) + q * sp.sin(beta), p * sp.cos(alpha) + q * sp.cos(beta))
given = {p: first["magnitude"], q: second["magnitude"],
         alpha: sp.rad(first["direction"]), beta: sp.rad(second["direction"])}
for name, value in (("R", r), ("theta", theta)):
    print(name, "=", sp.latex(value))
    print(name, "=", sp.latex(value.subs(given)))
print("R =", sp.N(r.subs(given), 15), "theta =", sp.N(sp.deg(theta.subs(given)), 15))
