# Longley by least squares in rational arithmetic, run in this folder: coefficients, standard errors, residual sum of squares.
from fractions import Fraction as F
import csv
from decimal import Decimal, getcontext
getcontext().prec=60
rows=[r for r in csv.reader(l for l in open('../nist-linear/longley.csv') if l[0]!='#')][1:]
Y=[F(r[0]) for r in rows]; X=[[F(1)]+[F(v) for v in r[1:]] for r in rows]
p=7;n=len(Y)
A=[[sum(X[i][a]*X[i][b] for i in range(n)) for b in range(p)]+[F(int(a==b)) for b in range(p)] for a in range(p)]
for k in range(p):
    pv=next(r for r in range(k,p) if A[r][k]!=0); A[k],A[pv]=A[pv],A[k]
    d=A[k][k]; A[k]=[v/d for v in A[k]]
    for r in range(p):
        if r!=k:
            f=A[r][k]; A[r]=[x-f*y for x,y in zip(A[r],A[k])]
inv=[r[p:] for r in A]
xty=[sum(X[i][a]*Y[i] for i in range(n)) for a in range(p)]
b=[sum(inv[a][c]*xty[c] for c in range(p)) for a in range(p)]
rss=sum((Y[i]-sum(X[i][a]*b[a] for a in range(p)))**2 for i in range(n))
D=lambda f: Decimal(f.numerator)/Decimal(f.denominator)
for a in range(p): print(f"b{a}",'%.17g'%D(b[a]),'%.17g'%((D(rss)/(n-p)*D(inv[a][a])).sqrt()))
print('rss %.17g'%D(rss))
