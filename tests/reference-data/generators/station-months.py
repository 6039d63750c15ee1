"""Writes ten made-up stations x 100 years of GHCN-Daily months, about 36 MB, to time the reader: python3 station-months.py OUT.dly"""
import math, sys, calendar

with open(sys.argv[1], 'w', newline='\n') as f:
    for station in range(1, 11):
        for year in range(1920, 2020):
            for month in range(1, 13):
                last = calendar.monthrange(year, month)[1]
                for k, element in enumerate(('TMAX', 'TMIN', 'PRCP', 'SNOW', 'SNWD', 'TAVG', 'TOBS', 'AWND', 'WDF2', 'WSF2', 'EVAP')):
                    line = f'XXTIMING{station:03d}{year}{month:02d}{element}'
                    for day in range(1, 32):
                        v = round(120 + 110 * math.sin((month - 4 + day / 31) * math.pi / 6) + 20 * math.sin(day * 2.1 + year) - (90 if k else 0))
                        line += f'{v:5d}  X' if day <= last else '-9999   '
                    f.write(line + '\n')
