# Tails of the noncentral t far from the middle, by the trapezoidal rule over log s in 60-digit decimal arithmetic.
# Run: python3 noncentral_t_small_tails.py > ../power/noncentral-t-small-tails.csv
from decimal import Decimal as D, getcontext
getcontext().prec = 60
PI = D("3.14159265358979323846264338327950288419716939937510582097494459")

def normal_lower(z):
    """Phi(z): Taylor series about 0 for moderate z, continued fraction of the tail beyond."""
    if z > 5: return 1 - normal_lower(-z)
    if z < -5:
        x = -z; f = D(0)
        for k in range(600, 0, -1): f = k / (x + f)
        return (-x * x / 2).exp() / (2 * PI).sqrt() / (x + f)
    term, total, k = z, z, 0
    while abs(term) > D(10) ** -58:
        k += 1; term = -term * z * z / (2 * k); total += term / (2 * k + 1)
    return D("0.5") + total / (2 * PI).sqrt()

def gamma_half(n):
    """Gamma(n / 2)."""
    x = D(n) / 2; g = D(1)
    while x > 1: x -= 1; g *= x
    return g if x == 1 else g * PI.sqrt()

def lower(t, df, ncp):
    h = D(df) / 2; c = 2 * h ** h / gamma_half(df)
    step = D(1) / (24 + int(df ** 0.5) * 6); total = D(0); best = D(0)
    for direction in (1, -1):
        i = 0 if direction == 1 else -1; falling = 0
        while True:
            u = step * i; s = u.exp()
            term = c * (2 * h * u - h * s * s).exp() * normal_lower(t * s - ncp)
            total += term; best = max(best, term)
            falling = falling + 1 if term < best * D(10) ** -26 else 0
            if falling > 5: break
            i += direction
    return total * step

print("# P(T <= t), own quadrature in 60-digit decimal arithmetic, generators/noncentral_t_small_tails.py")
print("t,df,ncp,lower")
for t, df, ncp in [(-3, 1, 4), (-3, 2, 1.5), (1, 20, 12), (2, 3, 8), (0.5, 120, 5), (-8, 5, 2), (3, 10, 12), (-1, 7, 12), (-12, 30, 3), (2.5, 60, 10)]:
    print(f"{t},{df},{ncp},{lower(D(str(t)), df, D(str(ncp))):.20e}")
for t, df, ncp in [(12, 120, 2), (8, 15, 0.5), (12, 60, 1), (5, 30, -3)]:
    print(f"{-t},{df},{-ncp},{lower(D(str(-t)), df, D(str(-ncp))):.20e}")
