"""Writes fixtures/conversions.tsv: factors from definitions in exact fractions, compared with printed ones."""

import math
import re
from decimal import ROUND_HALF_EVEN, Decimal, localcontext
from fractions import Fraction

import tables

FIGURES = 7
SP811 = "NIST SP 811 app. B"
MEMORY = "NIST SP 811 app. B, from memory"
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
kWh       | J        | 3.6e6*          | 3600000                               | {MEMORY}
t_TNT     | J        | 4.184e9*        | 4184000000                            | {SP811}
erg       | J        | 1e-7*           | 1/10000000                            | {SP811}
mph       | m/s      | 4.4704e-1*      | 5280*0.3048/3600                      | {MEMORY}
kn        | m/s      | 5.144444e-1     | 1852/3600                             | {SP811}
km/h      | m/s      | 2.777778e-1     | 1/3.6                                 | {MEMORY}
ly        | m        | 9.46073e15      | 299792458*365.25*86400                | {SP811}, six figures there; exactly 9460730472580800 m
pc        | m        | 3.085678e16     | 149597870700*648000/pi                | {SP811}
au        | m        | 149597870700*   | 149597870700                          | IAU 2012 resolution B2
Å         | m        | 1e-10*          | 1/10000000000                         | {SP811}
°         | rad      | 1.745329e-2     | pi/180                                | {SP811}
rpm       | rad/s    | 1.047198e-1     | 2*pi/60                               | {MEMORY}
Ci        | 1/s      | 3.7e10*         | 37000000000                           | {SP811}
statC     | C        | 3.335641e-10    | 0.1/299792458                         | {SP811}
D         | C m      | 3.335641e-30    | 0.000000000000000000001/299792458     | {MEMORY}, debye
G         | T        | 1e-4*           | 1/10000                               | {SP811}, gauss
L         | m^3      | 1e-3*           | 1/1000                                | {SP811}
t         | kg       | 1e3*            | 1000                                  | {SP811}
min       | s        | 60*             | 60                                    | SI Brochure 9, table 8
h         | s        | 3600*           | 3600                                  | SI Brochure 9, table 8
d         | s        | 86400*          | 86400                                 | SI Brochure 9, table 8
eV        | J        | 1.602176634e-19* | 0.0000000000000000001602176634       | SI Brochure 9, table 8
[fth_us]  | m        | 1.828804        | 6*(1200/3937)                         | {SP811}, fathom of survey feet
[ch_us]   | m        | 2.011684e1      | 66*(1200/3937)                        | {SP811}, chain of survey feet
[rd_us]   | m        | 5.029210        | 16.5*(1200/3937)                      | {SP811}, rod of survey feet
[mi_us]   | m        | 1.609347e3      | 5280*(1200/3937)                      | {SP811}, mile of survey feet
[mil_i]   | m        | 2.54e-5*        | 0.0000254                             | {SP811}, a thousandth of an inch
[pca]     | m        | 4.233333e-3     | 0.0254/6                              | {SP811}, pica of computers
[pnt]     | m        | 3.527778e-4     | 0.0254/72                             | {SP811}, point of computers
[pca_pr]  | m        | 4.217518e-3     | 12*0.0003514598                       | {SP811}, pica of printers
[pnt_pr]  | m        | 3.514598e-4     | 0.0003514598                          | {SP811}, point of printers
inch^2    | m^2      | 6.4516e-4*      | 0.0254^2                              | {MEMORY}
ft^2      | m^2      | 9.290304e-2*    | 0.3048^2                              | {MEMORY}
yd^2      | m^2      | 8.361274e-1     | 0.9144^2                              | {MEMORY}
mi^2      | m^2      | 2.589988e6      | 1609.344^2                            | {MEMORY}
ha        | m^2      | 1e4*            | 10000                                 | {SP811}
barn      | m^2      | 1e-28*          | 0.0000000000000000000000000001        | {SP811}
[cml_i]   | m^2      | 5.067075e-10    | pi/4*0.0000254^2                      | {SP811}, circular mil
inch^3    | m^3      | 1.638706e-5     | 0.0254^3                              | {MEMORY}
ft^3      | m^3      | 2.831685e-2     | 0.3048^3                              | {MEMORY}
yd^3      | m^3      | 7.645549e-1     | 0.9144^3                              | {MEMORY}
[acr_us].[ft_us] | m^3 | 1.233489e3    | 43560*(1200/3937)^3                   | {SP811}, acre-foot
[bu_us]   | m^3      | 3.523907e-2     | 2150.42*0.0254^3                      | {SP811}, bushel
[pk_us]   | m^3      | 8.809768e-3     | 2150.42/4*0.0254^3                    | {SP811}, peck
[dqt_us]  | m^3      | 1.101221e-3     | 2150.42/32*0.0254^3                   | {SP811}, dry quart
[dpt_us]  | m^3      | 5.506105e-4     | 2150.42/64*0.0254^3                   | {SP811}, dry pint
[crd_us]  | m^3      | 3.624556        | 128*0.3048^3                          | {SP811}, cord
quart     | m^3      | 9.463529e-4     | 231/4*0.0254^3                        | {SP811}, US liquid
pint      | m^3      | 4.731765e-4     | 231/8*0.0254^3                        | {SP811}, US liquid
cup       | m^3      | 2.365882e-4     | 231/16*0.0254^3                       | {SP811}, US
[gil_us]  | m^3      | 1.182941e-4     | 231/32*0.0254^3                       | {SP811}, US gill
[gil_br]  | m^3      | 1.420653e-4     | 0.00454609/32                         | {SP811}, UK gill
[foz_br]  | m^3      | 2.841306e-5     | 0.00454609/160                        | {SP811}, UK fluid ounce
floz      | m^3      | 2.957353e-5     | 231/128*0.0254^3                      | {SP811}, US
tbsp      | m^3      | 1.478676e-5     | 231/256*0.0254^3                      | {SP811}, US
tsp       | m^3      | 4.928922e-6     | 231/768*0.0254^3                      | {SP811}, US
[gr]      | kg       | 6.479891e-5*    | 0.00006479891                         | {SP811}, grain
[car_m]   | kg       | 2e-4*           | 0.0002                                | {SP811}, metric carat
[oz_tr]   | kg       | 3.110348e-2     | 480*0.00006479891                     | {SP811}, troy ounce
[pwt_tr]  | kg       | 1.555174e-3     | 24*0.00006479891                      | {SP811}, pennyweight
[lb_tr]   | kg       | 3.732417e-1     | 5760*0.00006479891                    | {SP811}, troy pound
[scwt_av] | kg       | 4.535924e1      | 100*0.45359237                        | {SP811}, short hundredweight
[lcwt_av] | kg       | 5.080235e1      | 112*0.45359237                        | {SP811}, long hundredweight
[lton_av] | kg       | 1.016047e3      | 2240*0.45359237                       | {SP811}, long ton
lb/ft^3   | kg/m^3   | 1.601846e1      | 0.45359237/0.3048^3                   | {MEMORY}
lb/inch^3 | kg/m^3   | 2.767990e4      | 0.45359237/0.0254^3                   | {MEMORY}
slug/ft^3 | kg/m^3   | 5.153788e2      | 0.45359237*9.80665/0.3048^4           | {MEMORY}
lb/gal    | kg/m^3   | 1.198264e2      | 0.45359237/(231*0.0254^3)             | {MEMORY}
g/cm^3    | kg/m^3   | 1e3*            | 1000                                  | {MEMORY}
lb ft/s^2 | N        | 1.382550e-1     | 0.45359237*0.3048                     | {SP811}, poundal
inch lbf  | N m      | 1.129848e-1     | 0.0254*0.45359237*9.80665             | {MEMORY}
kgf/cm^2  | Pa       | 9.80665e4*      | 98066.5                               | {SP811}, technical atmosphere
lbf/ft^2  | Pa       | 4.788026e1      | 0.45359237*9.80665/0.3048^2           | {MEMORY}
dyn/cm^2  | Pa       | 1e-1*           | 0.1                                   | {MEMORY}
cm[H2O]   | Pa       | 9.80665e1*      | 98.0665                               | {SP811}, conventional
[in_i'H2O] | Pa      | 2.490889e2      | 9.80665*25.4                          | {SP811}, conventional
cm[Hg]    | Pa       | 1.33322e3       | 1333.22                               | {SP811}, at 0 °C, six figures there
[in_i'Hg] | Pa       | 3.38638e3       | 133.322*25.4                          | {SP811}, at 32 °F, six figures there
kcal      | J        | 4.184e3*        | 4184                                  | {SP811}, of food, thermochemical
cal_m     | J        | 4.19002         | 4.19002                               | {SP811}, mean calorie, six figures there
cal_[15]  | J        | 4.18580         | 4.1858                                | {SP811}, at 15 °C, six figures there
cal_[20]  | J        | 4.18190         | 4.1819                                | {SP811}, at 20 °C, six figures there
[Btu_m]   | J        | 1.05587e3       | 1055.87                               | {SP811}, mean, six figures there
[Btu_39]  | J        | 1.05967e3       | 1059.67                               | {SP811}, at 39 °F, six figures there
[Btu_59]  | J        | 1.05480e3       | 1054.8                                | {SP811}, at 59 °F, six figures there
[Btu_60]  | J        | 1.05468e3       | 1054.68                               | {SP811}, at 60 °F, six figures there
cal/cm^2  | J/m^2    | 4.184e4*        | 41840                                 | {SP811}, langley
btu/h     | W        | 2.930711e-1     | 1055.05585262/3600                    | {MEMORY}
lm/ft^2   | lx       | 1.076391e1      | 1/0.3048^2                            | {SP811}, footcandle
ft/s      | m/s      | 3.048e-1*       | 0.3048                                | {MEMORY}
ft/min    | m/s      | 5.08e-3*        | 0.3048/60                             | {MEMORY}
gal/min   | m^3/s    | 6.309020e-5     | 231*0.0254^3/60                       | {MEMORY}
mi/gal    | 1/m^2    | 4.251437e5      | 1609.344/(231*0.0254^3)               | {MEMORY}
poise     | Pa s     | 1e-1*           | 0.1                                   | {SP811}
cP        | Pa s     | 1e-3*           | 0.001                                 | {SP811}
St        | m^2/s    | 1e-4*           | 0.0001                                | {SP811}
rem       | Sv       | 1e-2*           | 0.01                                  | {SP811}
A h       | C        | 3.6e3*          | 3600                                  | {SP811}
arcmin    | rad      | 2.908882e-4     | pi/10800                              | {SP811}
arcsec    | rad      | 4.848137e-6     | pi/648000                             | {SP811}
rev       | rad      | 6.283185        | 2*pi                                  | {SP811}
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
            "The definitions and roundings are computed. That SP 811 (2008) prints these was compared with a stored",
            "copy of its table of factors by kind of quantity, except where a row says `from memory`.",
            "Names of units with `_` are this table's own where the everyday name means several units.",
        ],
        [
            tables.row("unit", "si", "factor", "kind", "definition", "source"),
            *(line(text) for text in FACTORS.strip().splitlines()),
        ],
    )


if __name__ == "__main__":
    main()
