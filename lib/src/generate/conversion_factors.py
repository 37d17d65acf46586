"""Writes fixtures/conversions.tsv: factors from definitions in exact fractions, compared with printed ones."""

import math
import re
from decimal import ROUND_HALF_EVEN, Decimal, localcontext
from fractions import Fraction

import tables

FIGURES = 7
SP811 = "NIST SP 811 app. B"
PI = Fraction(math.pi)  # exact to 16 figures, of which seven are used

# unit | SI unit | printed factor (`*`: exact) | definition in SI | source and remark
FACTORS = f"""
in        | m        | 2.54e-2*        | 0.0254                                | {SP811}
ft        | m        | 3.048e-1*       | 0.3048                                | {SP811}
ft_survey | m        | 3.048006e-1     | 1200/3937                             | {SP811}, US survey foot
yd        | m        | 9.144e-1*       | 3*0.3048                              | {SP811}
mi        | m        | 1.609344e3*     | 5280*0.3048                           | {SP811}
nmi       | m        | 1852*           | 1852                                  | {SP811}
acre      | m^2      | 4.046856e3      | 43560*0.3048^2                        | international foot; value computed here
acre_survey | m^2    | 4.046873e3      | 43560*(1200/3937)^2                   | {SP811}, which takes the survey foot
gal_US    | m^3      | 3.785412e-3     | 231*0.0254^3                          | {SP811}
gal_UK    | m^3      | 4.54609e-3*     | 0.00454609                            | {SP811}
bbl       | m^3      | 1.589873e-1     | 42*231*0.0254^3                       | {SP811}, 42 US gallons
lb        | kg       | 4.535924e-1     | 0.45359237                            | {SP811}
oz        | kg       | 2.834952e-2     | 0.45359237/16                         | {SP811}
ton_short | kg       | 9.071847e2      | 2000*0.45359237                       | {SP811}
slug      | kg       | 1.459390e1      | 0.45359237*9.80665/0.3048             | {SP811}
lbf       | N        | 4.448222        | 0.45359237*9.80665                    | {SP811}
kgf       | N        | 9.80665*        | 9.80665                               | {SP811}
dyn       | N        | 1e-5*           | 1/100000                              | {SP811}
psi       | Pa       | 6.894757e3      | 0.45359237*9.80665/0.0254^2           | {SP811}
atm       | Pa       | 1.01325e5*      | 101325                                | {SP811}
torr      | Pa       | 1.333224e2      | 101325/760                            | {SP811}
mmHg      | Pa       | 1.333224e2      | 13.5951*9.80665                       | {SP811}, conventional; differs from torr in the eighth figure
inHg      | Pa       | 3.386389e3      | 25.4*13.5951*9.80665                  | {SP811}, conventional
bar       | Pa       | 1e5*            | 100000                                | {SP811}
ft_lbf    | J        | 1.355818        | 0.3048*0.45359237*9.80665             | {SP811}
hp        | W        | 7.456999e2      | 550*0.3048*0.45359237*9.80665         | {SP811}, 550 foot pounds-force a second
hp_metric | W        | 7.354988e2      | 75*9.80665                            | {SP811}, exactly 735.49875: a tie, half to even
Btu_IT    | J        | 1.055056e3      | 1055.05585262                         | {SP811}
Btu_th    | J        | 1.054350e3      | 4.184*453.59237/1.8                   | {SP811}
cal_th    | J        | 4.184*          | 4.184                                 | {SP811}
cal_IT    | J        | 4.1868*         | 4.1868                                | {SP811}
kWh       | J        | 3.6e6*          | 3600000                               | {SP811}
t_TNT     | J        | 4.184e9*        | 4184000000                            | {SP811}
erg       | J        | 1e-7*           | 1/10000000                            | {SP811}
mph       | m/s      | 4.4704e-1*      | 5280*0.3048/3600                      | {SP811}
kn        | m/s      | 5.144444e-1     | 1852/3600                             | {SP811}
km/h      | m/s      | 2.777778e-1     | 1/3.6                                 | {SP811}
ly        | m        | 9.46073e15      | 299792458*365.25*86400                | {SP811}, six figures there; exactly 9460730472580800 m
pc        | m        | 3.085678e16     | 149597870700*648000/pi                | {SP811}
au        | m        | 149597870700*   | 149597870700                          | IAU 2012 resolution B2
Å         | m        | 1e-10*          | 1/10000000000                         | {SP811}
°         | rad      | 1.745329e-2     | pi/180                                | {SP811}
rpm       | rad/s    | 1.047198e-1     | 2*pi/60                               | {SP811}
Ci        | 1/s      | 3.7e10*         | 37000000000                           | {SP811}
statC     | C        | 3.335641e-10    | 0.1/299792458                         | {SP811}
D         | C m      | 3.335641e-30    | 0.000000000000000000001/299792458     | {SP811}, debye
G         | T        | 1e-4*           | 1/10000                               | {SP811}, gauss
L         | m^3      | 1e-3*           | 1/1000                                | {SP811}
t         | kg       | 1e3*            | 1000                                  | {SP811}
min       | s        | 60*             | 60                                    | SI Brochure 9, table 8
h         | s        | 3600*           | 3600                                  | SI Brochure 9, table 8
d         | s        | 86400*          | 86400                                 | SI Brochure 9, table 8
eV        | J        | 1.602176634e-19* | 0.0000000000000000001602176634       | SI Brochure 9, table 8
"""


def definition(text):
    """Evaluates with every decimal as an exact fraction."""
    exact = re.sub(r"\d+(\.\d+)?", r"Fraction('\g<0>')", text).replace("^", "**")
    exact = re.sub(r"\*\*Fraction\('(\d+)'\)", r"**\1", exact)
    return eval(exact, {"__builtins__": {}, "Fraction": Fraction, "pi": PI})


def rounded(value, figures):
    """Half to even at so many figures, as SP 811 rounds."""
    with localcontext() as context:
        context.prec = 60
        number = Decimal(value.numerator) / Decimal(value.denominator)
        return number.quantize(Decimal((0, (1,), number.adjusted() - figures + 1)), ROUND_HALF_EVEN)


def figures(printed):
    return len(printed.split("e")[0].replace(".", "").lstrip("0"))


def line(text):
    unit, si, printed, formula, source = (cell.strip() for cell in text.split("|"))
    exact, factor, value = printed.endswith("*"), printed.rstrip("*"), definition(formula)
    if exact and Fraction(factor) != value:
        raise ValueError(f"{unit}: {value} is not exactly {factor}")
    if not exact and Fraction(rounded(value, figures(factor))) != Fraction(factor):
        raise ValueError(f"{unit}: {float(value)} does not round to {factor}")
    return tables.row(unit, si, factor, "exact" if exact else "rounded", formula, source)


def main():
    tables.write(
        tables.FIXTURES / "conversions.tsv",
        [
            "Conversion factors to SI: 1 unit = factor si.",
            "Computed by `python lib/src/generate/conversion_factors.py` with Python's fractions, which also",
            "checks that each definition gives the printed factor.",
            "kind: `exact`, or `rounded`: to the figures written, half to even (seven in SP 811, ly has six).",
            "definition: an exact expression in numbers of the SI unit; ^ is a power.",
            "The definitions and roundings are computed; that SP 811 prints exactly these is from memory.",
            "Names of units with `_` are this table's own where the everyday name means several units.",
        ],
        [
            tables.row("unit", "si", "factor", "kind", "definition", "source"),
            *(line(text) for text in FACTORS.strip().splitlines()),
        ],
    )


if __name__ == "__main__":
    main()
