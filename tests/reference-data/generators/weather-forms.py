"""Writes the same Seattle days in each form in which weather comes, and damaged variants with the place and code of each fault.

Days: seattle-2012.csv beside the forms (U.S. government data carried by the npm package vega-datasets 3.2.1 as seattle-weather.csv, degrees C),
25 February to 31 May 2012. The forms are as their owners describe them: NOAA, GHCN-Daily readme.txt and by_year readme; NASA POWER; Daymet.
The station XXSEATTLE01 is made up; the values are not. Run: python3 weather-forms.py
"""
import csv, datetime, json, os

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), '..', 'weather')
STATION = 'XXSEATTLE01'
with open(os.path.join(ROOT, 'seattle-2012.csv')) as f:
    rows = [(datetime.date.fromisoformat(r[0]), float(r[1]), float(r[2])) for r in csv.reader(l for l in f if not l.startswith('#')) if r[0] != 'date']
tenths = lambda v: round(v * 10)


def dly():
    out = []
    for year, month in sorted({(d.year, d.month) for d, _, _ in rows}):
        for element, place in (('TMAX', 1), ('TMIN', 2), ('PRCP', None)):
            line = f'{STATION}{year}{month:02d}{element}'
            for day in range(1, 32):
                row = next((r for r in rows if (r[0].year, r[0].month, r[0].day) == (year, month, day)), None)
                line += f'{tenths(row[place]):5d}  X' if row and place else f'{-9999:5d}   '
            out.append(line.rstrip())
    return out


def by_year():
    return [f'{STATION},{d:%Y%m%d},{e},{v},,,X,0700' for d, x, n in rows for e, v in (('TMAX', tenths(x)), ('TMIN', tenths(n)), ('PRCP', 0))]


def access():
    head = '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"'
    return [head] + [f'"{STATION}","{d}","47.45","-122.31","112.0","SEATTLE, WA US","    0",",,X","{tenths(x):5d}",",,X","{tenths(n):5d}",",,X"' for d, x, n in rows]


def order():
    f = lambda c: round(c * 1.8 + 32)
    return ['"STATION","NAME","DATE","AWND","TMAX","TMIN","WT01"'] + [f'"{STATION}","SEATTLE, WA US","{d}","","{f(x)}","{f(n)}",""' for d, x, n in rows]


def power():
    return ['-BEGIN HEADER-', 'NASA/POWER Source Native Resolution Daily Data', 'Dates (month/day/year): 02/25/2012 through 05/31/2012 in LST',
            'The value for missing source data that cannot be computed or is outside of the sources availability range: -999', 'Parameter(s):',
            'T2M_MAX     Temperature at 2 Meters Maximum (C)', 'T2M_MIN     Temperature at 2 Meters Minimum (C)', '-END HEADER-', 'YEAR,MO,DY,T2M_MAX,T2M_MIN,PRECTOTCORR'] \
        + [f'{d.year},{d.month},{d.day},{x},{n},0.0' for d, x, n in rows]


def daymet():
    return ['Latitude: 47.45  Longitude: -122.31', 'X & Y on Lambert Conformal Conic: -1689000.0 712000.0', 'Tile: 12266', 'Elevation: 112 meters',
            'year,yday,dayl (s),prcp (mm/day),srad (W/m^2),swe (kg/m^2),tmax (deg c),tmin (deg c),vp (Pa)'] \
        + [f'{d.year},{d.timetuple().tm_yday},40000.0,0.00,200.0,0.0,{x},{n},600.0' for d, x, n in rows]


def plain():
    return ['date,tmax_c,tmin_c'] + [f'{d},{x},{n}' for d, x, n in rows]


def hourly():
    return ['date,temperature_c'] + [f'2012-05-0{d} {h:02d}:00,{10 + h % 12}.5' for d in (1, 2) for h in range(24)]


FORMS = {'months': ('seattle.dly', dly()), 'values': ('seattle-by-year.csv', by_year()), 'access': ('seattle-access.csv', access()), 'order': ('seattle-order.csv', order()),
         'power': ('seattle-power.csv', power()), 'daymet': ('seattle-daymet.csv', daymet()), 'plain': ('seattle-plain.csv', plain()), 'hourly': ('hours.csv', hourly())}
for name, lines in FORMS.values():
    with open(os.path.join(ROOT, name), 'w', newline='\n') as f:
        f.write('\n'.join(lines) + '\n')

cases = []


def case(name, form, line, edit, code, unit=None, station=None, at=None):
    """Edits one line, counted from 1; the fault is expected there, or at the line `at`. An edit gives the new line, or several, or none to drop it."""
    old = FORMS[form][1][line - 1]
    new = edit(old)
    assert new != old, name
    cases.append({'case': name, 'form': FORMS[form][0], 'line': line, 'text': new if isinstance(new, list) else [new], 'code': code, 'at': at or line,
                  'unit': unit, 'station': station})


put = lambda a, b: lambda s: s.replace(a, b, 1)
value = lambda v: lambda s: s[:21 + 8 * 25] + v + s[21 + 8 * 25 + 5:]   # day 26 of a month line
cell = lambda i, v: lambda s: ','.join(v if j == i else c for j, c in enumerate(s.split(',')))
twice = lambda s: [s, s]

case('months: a value of letters', 'months', 1, value(' 1x7 '), 'TK411')
case('months: a year of letters', 'months', 4, put('012012', '01x012'), 'TK411')
case('months: month 13', 'months', 4, put('201203', '201213'), 'TK411')
case('months: a line cut within its head', 'months', 4, lambda s: s[:15], 'TK411')
case('months: a line too long', 'months', 4, lambda s: s.ljust(269) + '   12', 'TK411')
case('months: a value too hot', 'months', 1, value('  999'), 'TK402')
case('months: a value too cold', 'months', 2, value(' -999'), 'TK402')
case('months: a maximum below its minimum', 'months', 1, value(' -100'), 'TK401')
case('months: a month twice', 'months', 5, twice, 'TK403', at=6)
case('months: a second station', 'months', 7, put('XXSEATTLE01', 'XXSEATTLE02'), 'TK410')
case('months: a station that is not there', 'months', 7, put('XXSEATTLE01', 'XXSEATTLE02'), 'TK413', station='XXSEATTLE09', at=1)
case('months: a value that failed a check', 'months', 1, lambda s: s[:21 + 8 * 25 + 6] + 'I' + s[21 + 8 * 25 + 7:], 'TK409')
case('months: a value on 31 April', 'months', 7, lambda s: s.ljust(261) + '  150', 'TK411')
case('months: a tab among the values', 'months', 1, value('\t12 3'), 'TK411')
case('values: a day that is not', 'values', 4, put('20120226', '20120231'), 'TK411')
case('values: a short date', 'values', 4, put('20120226', '201202'), 'TK411')
case('values: a value of letters', 'values', 4, cell(3, 'warm'), 'TK411')
case('values: a value with a fraction', 'values', 4, cell(3, '12.5'), 'TK411')
case('values: cells missing', 'values', 4, lambda s: ','.join(s.split(',')[:3]), 'TK411')
case('values: a value twice', 'values', 4, twice, 'TK403', at=5)
case('values: a value too hot', 'values', 4, cell(3, '812'), 'TK402')
case('values: a maximum below its minimum', 'values', 4, cell(3, '-300'), 'TK401')
case('values: a second station', 'values', 7, put('XXSEATTLE01', 'XXSEATTLE02'), 'TK410')
case('values: a value that failed a check', 'values', 4, cell(5, 'G'), 'TK409')
case('access: no unit given', 'access', 2, put('47.45', '47.46'), 'TK123', at=1)
case('access: a day twice', 'access', 5, twice, 'TK403', unit='0.1 C', at=6)
case('access: a day out of order', 'access', 5, put('2012-02-28', '2012-02-20'), 'TK404', unit='0.1 C')
case('access: a second station', 'access', 5, put('XXSEATTLE01', 'XXSEATTLE02'), 'TK410', unit='0.1 C')
case('access: a station that is not there', 'access', 5, put('XXSEATTLE01', 'XXSEATTLE02'), 'TK413', unit='0.1 C', station='XXSEATTLE09', at=1)
case('access: a value that failed a check', 'access', 5, lambda s: s[::-1].replace('X,,', 'X,I,', 1)[::-1], 'TK409', unit='0.1 C')
case('access: a value with a blank within', 'access', 5, put('"    0",",,X","  ', '"    0",",,X","99'), 'TK104', unit='0.1 C')
case('access: a value far too hot', 'access', 5, put('"    0",",,X","   ', '"    0",",,X"," 99'), 'TK402', unit='0.1 C')
case('access: tenths read as whole degrees', 'access', 2, put('47.45', '47.46'), 'TK402', unit='C')
case('access: the column of minima missing', 'access', 1, put('"TMIN"', '"TLOW"'), 'TK408', unit='0.1 C')
case('access: a column twice', 'access', 1, put('"PRCP"', '"TMAX"'), 'TK120', unit='0.1 C')
case('access: a quote left open', 'access', 98, lambda s: s[:-1], 'TK114', unit='0.1 C')
case('order: no unit given', 'order', 2, put('""', '"1"'), 'TK123', at=1)
case('order: a value of letters', 'order', 3, lambda s: s.replace('"' + s.split('","')[-3] + '"', '"mild"', 1), 'TK104', unit='F')
case('order: a date of no calendar', 'order', 3, put('2012-02-26', '2012-02-36'), 'TK106', unit='F')
case('order: a date in another form', 'order', 3, put('2012-02-26', '26.2.2012'), 'TK107', unit='F')
case('power: the end of the heading lost', 'power', 8, lambda s: 'END', 'TK122', at=1)
case('power: month 13', 'power', 11, cell(1, '13'), 'TK412')
case('power: 30 February', 'power', 11, cell(2, '30'), 'TK412')
case('power: a missing value', 'power', 11, cell(3, '-999'), 'TK405')
case('power: the column of minima missing', 'power', 9, put('T2M_MIN', 'T2M_LOW'), 'TK122')
case('power: a day twice', 'power', 11, twice, 'TK403', at=12)
case('power: days out of order', 'power', 12, cell(2, '20'), 'TK404')
case('power: a maximum below its minimum', 'power', 11, cell(3, '-20'), 'TK401')
case('power: a value of letters', 'power', 11, cell(4, 'cool'), 'TK104')
case('power: a row too short', 'power', 11, lambda s: s.rsplit(',', 1)[0], 'TK102')
case('daymet: day 367', 'daymet', 7, cell(1, '367'), 'TK412')
case('daymet: a day with a fraction', 'daymet', 7, cell(1, '57.5'), 'TK108')
case('daymet: a day twice', 'daymet', 7, twice, 'TK403', at=8)
case('daymet: a value too cold', 'daymet', 7, cell(7, '-273'), 'TK402')
case('daymet: the column of maxima missing', 'daymet', 5, put('tmax', 'thigh'), 'TK122')
case('plain: a unit that is none', 'plain', 1, put('tmax_c', 'tmax_lb'), 'TK124')
case('plain: a value twice a day', 'plain', 9, twice, 'TK403', at=10)
case('plain: an empty value', 'plain', 9, cell(1, ''), 'TK405')
case('hours: time goes back', 'hourly', 9, put('07:00', '05:00'), 'TK407')
case('hours: an hour missing', 'hourly', 9, lambda s: [], 'TK406', at=2)
case('hours: a value too hot', 'hourly', 9, cell(1, '99'), 'TK402')
with open(os.path.join(ROOT, 'damaged.json'), 'w', newline='\n') as f:
    json.dump(cases, f, indent=1)
    f.write('\n')
print(len(cases), 'cases')
