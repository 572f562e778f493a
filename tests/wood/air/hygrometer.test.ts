import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { readHygrometer } from '../../../kernel-helpers/src/wood/air/hygrometer.js';
import type { HygrometerReading } from '../../../kernel-helpers/src/wood/air/hygrometer-reading.js';

const header = 'date,temperature (°C),humidity (%)';
const table = (...rows: string[]) => readHygrometer([header, ...rows].join('\n'));
const told = (...rows: string[]) => table(...rows).problems.map(({ line, what }) => `${line}: ${what}`);

describe("the maker's hygrometer", () => {
  it('reads a clean table', () => {
    expect(table('2026-01-01,20.5,41', '2026-01-02,19,43.5')).toEqual({
      readings: [
        { date: '2026-01-01', temperatureC: 20.5, relativeHumidity: 0.41 },
        { date: '2026-01-02', temperatureC: 19, relativeHumidity: 0.435 },
      ],
      problems: [],
    });
  });

  it.each([
    ['columns in another order', 'RH %,Temp °C,Date\n45,20,2026-01-01\n'],
    ['Fahrenheit', 'date,temperature (°F),humidity (%)\n2026-01-01,68,45\n'],
    ['fractions', 'date,temperature (°C),humidity (fraction)\n2026-01-01,20,0.45\n'],
    ['units behind the values', 'date,temperature,humidity\n2026-01-01,68 °F,45 %\n'],
    ['a column of units', 'date,temperature,unit,humidity (%)\n2026-01-01,68,°F,45\n'],
    ['semicolons with decimal commas', 'date;temperature (°C);humidity (%)\n2026-01-01;20,0;45,0\n'],
    ['tabs', 'date\ttemperature (°C)\thumidity (%)\n2026-01-01\t20\t45\n'],
    ['quoted fields', '"date","temperature (°C)","humidity (%)"\n"2026-01-01","20","45"\n'],
    ['a byte-order mark and carriage returns', '\uFEFFdate,temperature (°C),humidity (%)\r\n2026-01-01,20,45\r\n'],
    ['empty lines', '\ndate,temperature (°C),humidity (%)\n\n2026-01-01,20,45\n\n'],
    ['further columns', 'no.,date,temperature (°C),dew point (°C),humidity (%)\n1,2026-01-01,20,7.7,45\n'],
    ['a degree sign lost on the way', 'date,temperature (\uFFFDC),humidity (%)\n2026-01-01,20,45\n'],
    ['temperature and humidity by their short names', 'day,temp C,RH %\n2026-01-01,20,45\n'],
    ['a date named datetime', 'datetime,temp C,RH %\n2026-01-01,20,45\n'],
    ['a date named timestamp', 'timestamp,temp C,RH %\n2026-01-01,20,45\n'],
    ['degC and percent', 'date,temperature degC,humidity percent\n2026-01-01,20,45\n'],
    ['degF and pct', 'date,temperature degF,humidity pct\n2026-01-01,68,45\n'],
    ['Celsius in full', 'date,temperature Celsius,humidity %\n2026-01-01,20,45\n'],
    ['Fahrenheit in full', 'date,temperature Fahrenheit,humidity %\n2026-01-01,68,45\n'],
    ['the temperature that it feels like', 'date,feels-like temp C,temp C,RH %\n2026-01-01,17,20,45\n'],
    ['the temperature of a wet thermometer', 'date,wet bulb temp C,temp C,RH %\n2026-01-01,13,20,45\n'],
    ['two columns of units', 'date,temperature,unit of t,humidity,unit of h\n2026-01-01,68,F,45,%\n'],
    ['a number that ends with its point', 'date,temp C,RH %\n2026-01-01,20.,45\n'],
    ['a plus before the number', 'date,temp C,RH %\n2026-01-01,+20,45\n'],
  ])('reads %s', (_, text) => {
    expect(readHygrometer(text)).toEqual({
      readings: [{ date: '2026-01-01', temperatureC: 20, relativeHumidity: 0.45 }],
      problems: [],
    });
  });

  it('reads a time of day, in the date or in a column of its own', () => {
    const dates = (text: string) => readHygrometer(text).readings.map(({ date }) => date);
    expect(dates(`${header}\n2026-01-01 08:30,20,45\n2026-01-01T20:30:00+01:00,21,44`)).toEqual([
      '2026-01-01T08:30',
      '2026-01-01T20:30:00',
    ]);
    expect(dates(`${header}\n2026-01-01 08:30:15.250Z,20,45`)).toEqual(['2026-01-01T08:30:15']);
    expect(dates(`${header}\n2026-01-01 08:30.5,20,45`)).toEqual([]);
    expect(dates('date,time,temp C,RH %\n2026-01-01,08:30,20,45')).toEqual(['2026-01-01T08:30']);
    expect(dates('time,temp C,RH %\n2026-01-01 08:30,20,45')).toEqual(['2026-01-01T08:30']);
  });

  it('reads every time of the clock, from midnight to a second before the next, and no other', () => {
    const read = (time: string) => table(`2026-01-01T${time},20,45`).readings.map(({ date }) => date.slice(11));
    for (const time of ['00:00', '00:00:00', '23:59', '23:59:59', '09:59', '23:00', '12:30:59'])
      expect(read(time), time).toEqual([time]);
    for (const time of ['24:00', '23:60', '23:59:60', '99:99']) expect(read(time), time).toEqual([]);
    expect(told('2026-01-01T24:00,20,45')).toEqual([
      '2: date "2026-01-01T24:00" is not a day in ISO form, such as 2026-02-14; the row is left out',
    ]);
  });

  it('keeps air as cold as -40 °C and as warm as 60 °C, on both scales, and leaves out what is beyond', () => {
    const read = (temperature: string) =>
      readHygrometer(`date,temperature,humidity (%)\n2026-01-01,${temperature},45`).readings.length;
    for (const possible of ['-40 °C', '60 °C', '-40 °F', '140 °F', '0 °C']) expect(read(possible), possible).toBe(1);
    for (const impossible of ['-40.1 °C', '60.1 °C', '-40.1 °F', '140.1 °F'])
      expect(read(impossible), impossible).toBe(0);
  });

  it('keeps saturated air, as 100 % and as 1, and tells a slip of the other kind from what cannot be', () => {
    const read = (unit: string, humidity: string) =>
      readHygrometer(`date,temp C,humidity (${unit})\n2026-01-01,20,${humidity}`);
    const problem = (unit: string, humidity: string) => read(unit, humidity).problems[0]?.what;
    expect(read('%', '100').readings[0]?.relativeHumidity).toBe(1);
    expect(read('fraction', '1').readings[0]?.relativeHumidity).toBe(1);
    expect(read('%', '1.1').readings[0]?.relativeHumidity).toBeCloseTo(0.011, 12);
    expect(problem('%', '1')).toMatch('humidity 1 among percentages looks like a fraction (100 %?)');
    expect(problem('%', '-0.5')).toMatch('humidity -0.5 % is not possible');
    expect(problem('%', '100.1')).toMatch('humidity 100.1 % is not possible');
    expect(problem('fraction', '1.1')).toMatch('humidity 1.1 among fractions looks like a percentage (0.011?)');
    expect(problem('fraction', '100')).toMatch('humidity 100 among fractions looks like a percentage (1?)');
    expect(problem('fraction', '100.1')).toMatch('humidity 100.1 is not possible');
    expect(problem('fraction', '0')).toMatch('humidity 0 is not possible');
  });

  it('takes a unit behind the value that agrees with the header', () => {
    expect(told('2026-01-01,20 °C,45 %')).toEqual([]);
  });

  it('speaks of a decimal comma only where commas part the fields', () => {
    const semicolons = readHygrometer('date;temp C;RH %\n2026-01-01;20;5;45\n2026-01-02;20;45');
    expect(semicolons.problems.map(({ what }) => what)).toEqual(['4 of 3 fields; the row is left out']);
    expect(told('2026-01-01,"20,5",45')).toEqual(['2: temperature "20,5" is not a number; the row is left out']);
  });

  it('reports each row that is left out, with its line', () => {
    expect(
      told(
        '2026-01-01,20,45',
        '01/02/2026,20,45',
        '2026-02-30,20,45',
        '2026-01-02,warm,45',
        '2026-01-02,99,45',
        '2026-01-02,20,0',
        '2026-01-02,20,145',
        '2026-01-02,20,0.45',
        '2026-01-02;20;45',
        '2026-01-02,20,5,45',
        '2026-01-02,20,45',
      ),
    ).toEqual([
      '3: date "01/02/2026" is not a day in ISO form, such as 2026-02-14; the row is left out',
      '4: date "2026-02-30" is not a day in ISO form, such as 2026-02-14; the row is left out',
      '5: temperature "warm" is not a number; the row is left out',
      '6: temperature 99 °C is not possible here; the row is left out',
      '7: humidity 0 % is not possible; the row is left out',
      '8: humidity 145 % is not possible; the row is left out',
      '9: humidity 0.45 among percentages looks like a fraction (45 %?); the row is left out',
      '10: 1 of 3 fields (parted otherwise than the header?); the row is left out',
      '11: 4 of 3 fields (a decimal comma? write 21.5); the row is left out',
    ]);
  });

  it('reports a percentage among fractions, and units that contradict the header', () => {
    const { readings, problems } = readHygrometer(
      'date,temperature (°C),humidity (fraction)\n2026-01-01,20,45\n2026-01-02,68 °F,0.4\n2026-01-03,20,45 %\n2026-01-04,20,0.4',
    );
    expect(readings.map(({ date }) => date)).toEqual(['2026-01-04']);
    expect(problems.map(({ line, what }) => `${line}: ${what}`)).toEqual([
      '2: humidity 45 among fractions looks like a percentage (0.45?); the row is left out',
      '3: temperature in °F under a header in °C; the row is left out',
      '4: humidity as % under a header of fraction; the row is left out',
    ]);
  });

  it('reports doubled rows, rows out of order and days without a reading', () => {
    const { readings, problems } = table(
      '2026-01-01,20,45',
      '2026-01-05,20.5,46',
      '2026-01-05,20.5,46',
      '2026-01-05,23,39',
      '2026-01-02,21,44',
    );
    expect(readings.map(({ date, temperatureC }) => [date, temperatureC])).toEqual([
      ['2026-01-01', 20],
      ['2026-01-02', 21],
      ['2026-01-05', 20.5],
    ]);
    expect(problems.map(({ line, what }) => `${line}: ${what}`)).toEqual([
      '3: no reading for 2 days between 2026-01-02 (line 6) and 2026-01-05',
      '4: 2026-01-05 stands there twice, the same as line 3; line 3 is kept',
      '5: 2026-01-05 stands there twice, with other values than line 3; line 3 is kept',
      '6: 2026-01-02 comes after 2026-01-05 (line 5); it is put in its place',
    ]);
  });

  it('keeps the first of several rows with one date, wherever they stand', () => {
    const hours = Array.from({ length: 20 }, (_, hour) => `2026-01-02T${String(hour).padStart(2, '0')}:00`);
    // Read through three times, a degree warmer each time.
    const rows = [18, 19, 20].flatMap((degrees) => hours.map((date) => `${date},${degrees},${40 + degrees}`));
    const { readings, problems } = table(...rows);
    expect(readings.map(({ date, temperatureC }) => [date, temperatureC])).toEqual(hours.map((date) => [date, 18]));
    expect(problems.filter(({ what }) => what.includes('stands there twice'))).toHaveLength(40);
  });

  it('reports a row as doubled with other values when only one of them differs', () => {
    expect(told('2026-01-01,20,45', '2026-01-01,20,46', '2026-01-01,21,45', '2026-01-01,20,45')).toEqual([
      '3: 2026-01-01 stands there twice, with other values than line 2; line 2 is kept',
      '4: 2026-01-01 stands there twice, with other values than line 2; line 2 is kept',
      '5: 2026-01-01 stands there twice, the same as line 2; line 2 is kept',
    ]);
  });

  it('reports a single day without a reading, and none where days follow each other', () => {
    expect(told('2026-02-28,20,45', '2026-03-01,21,44', '2026-03-03,20,45')).toEqual([
      '4: no reading for 1 day between 2026-03-01 (line 3) and 2026-03-03',
    ]);
    expect(told('2026-01-01T23:50,20,45', '2026-01-02T00:10,21,44')).toEqual([]);
  });

  it('reports a value that stays the same for five days, and no shorter', () => {
    const rows = (count: number) => Array.from({ length: count }, (_, day) => `2026-01-0${day + 1},${20 + day},45`);
    expect(told(...rows(4))).toEqual([]);
    expect(told(...rows(5))).toEqual([
      '2: humidity stays at 45 % for 5 days (lines 2 to 6): is the sensor stuck? The readings are kept',
    ]);
    expect(table(...rows(5)).readings).toHaveLength(5);
  });

  it('counts days, not readings, when a value stays the same, and tells the temperature too', () => {
    const twiceADay = (days: number) =>
      Array.from({ length: 2 * days }, (_, half) => {
        const [day, hour] = [Math.floor(half / 2) + 1, half % 2 ? '20' : '08'];
        return `2026-01-0${day}T${hour}:00,19.5,${40 + half}`;
      });
    expect(told(...twiceADay(4))).toEqual([]);
    expect(told(...twiceADay(6), '2026-01-07,21,44')).toEqual([
      '2: temperature stays at 19.5 °C for 6 days (lines 2 to 13): is the sensor stuck? The readings are kept',
    ]);
  });

  it.each([
    ['', 1, 'the file is empty'],
    ['\n  \n', 1, 'the file is empty'],
    [`${header}\n`, 1, 'there is no row under the header'],
    ['d\0a\0t\0e\0', 1, 'the file is not plain text in UTF-8; save it again as CSV (UTF-8). Nothing was read'],
    [
      'date|temp C|RH %\n2026-01-01|20|45',
      1,
      'the header "date|temp C|RH %" has no comma, semicolon or tab between its columns; nothing was read',
    ],
    [
      '\ndate,temp C,pressure\n2026-01-01,20,1013',
      2,
      'no column for humidity in the header (it has "date", "temp C", "pressure"); nothing was read',
    ],
    [
      'date,temp in C,temp out C,RH %\n2026-01-01,20,5,45',
      1,
      '2 columns look like the temperature: "temp in C", "temp out C"; nothing was read',
    ],
    [
      'when,temp C,RH %\n2026-01-01,20,45',
      1,
      'no column for date in the header (it has "when", "temp C", "RH %"); nothing was read',
    ],
    [
      'date,RH %\n2026-01-01,45',
      1,
      'no column for temperature in the header (it has "date", "RH %"); nothing was read',
    ],
    [
      'date,time,time,temp C,RH %\n2026-01-01,08:30,09:30,20,45',
      1,
      '2 columns look like the time: "time", "time"; nothing was read',
    ],
    [
      'date,temperature,humidity (%)\n2026-01-01,20 °C,45\n2026-01-02,20,45',
      1,
      'the temperature has no unit: write °C or °F into its header, or give it as units.temperature; nothing was read',
    ],
    [
      'date,temperature,humidity (%)\n2026-01-01,20,45',
      1,
      'the temperature has no unit: write °C or °F into its header, or give it as units.temperature; nothing was read',
    ],
    [
      'date,temperature (°C),humidity\n2026-01-01,20,45\n2026-01-02,20,0.45',
      1,
      'the humidity has no unit, and its values can be neither all % nor all fractions: write % or fraction into its header, or give it as units.humidity; nothing was read',
    ],
  ])('reads nothing from %j and says why', (text, line, what) => {
    expect(readHygrometer(text)).toEqual({ readings: [], problems: [{ line, what }] });
  });

  it('says so when it takes a humidity without a unit as % or as a fraction', () => {
    const bare = (humidity: string) => readHygrometer(`date,temp C,humidity\n2026-01-01,20,${humidity}`);
    expect(bare('45').readings[0]?.relativeHumidity).toBe(0.45);
    expect(bare('45').problems[0]?.what).toBe(
      'the humidity has no unit; no value is as low as 1, so they are taken as %',
    );
    expect(bare('0.45').readings[0]?.relativeHumidity).toBe(0.45);
    expect(bare('0.45').problems[0]?.what).toBe(
      'the humidity has no unit; no value is above 1, so they are taken as fractions',
    );
  });

  it('takes a bare 1 as saturated air, and a bare 2 as 2 %; of values that are no humidity it says nothing', () => {
    const bare = (...humidities: string[]) =>
      readHygrometer(['date,temp C,humidity', ...humidities.map((h, day) => `2026-01-0${day + 1},20,${h}`)].join('\n'));
    expect(bare('1', '0.5').readings.map(({ relativeHumidity }) => relativeHumidity)).toEqual([1, 0.5]);
    expect(bare('2', '45').readings.map(({ relativeHumidity }) => relativeHumidity)).toEqual([0.02, 0.45]);
    // A zero is a slip, in either unit: it decides nothing.
    expect(bare('0', '45').readings.map(({ relativeHumidity }) => relativeHumidity)).toEqual([0.45]);
    expect(bare('dry').problems.map(({ what }) => what)).toEqual([
      'humidity "dry" is not a number; the row is left out',
    ]);
    // Where one row tells its unit and another does not, the header is still asked.
    expect(bare('45 %', '46').readings.map(({ relativeHumidity }) => relativeHumidity)).toEqual([0.45, 0.46]);
  });

  it('takes units that it is told', () => {
    const text = 'date,temperature,humidity\n2026-01-01,68,0.45';
    expect(readHygrometer(text, { temperature: '°F', humidity: 'fraction' }).readings).toEqual([
      { date: '2026-01-01', temperatureC: 20, relativeHumidity: 0.45 },
    ]);
  });

  it('names the line of a quote that is never closed, and reads the rest', () => {
    const { readings, problems } = table('2026-01-01,20,45', '2026-01-02,"21,45', '2026-01-03,22,45');
    expect(readings.map(({ date }) => date)).toEqual(['2026-01-01', '2026-01-03']);
    expect(problems[0]).toEqual({ line: 3, what: 'temperature ""21" is not a number; the row is left out' });
  });

  it('never throws, whatever the text, and every line it names exists', () => {
    const piece = fc.constantFrom(
      '2026-01-01',
      '20',
      '45',
      '0.4',
      ',',
      ';',
      '\n',
      '\r\n',
      '"',
      '°F',
      ' ',
      'x',
      '\uFEFF',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), fc.boolean(), (pieces, withHeader) => {
        const text = (withHeader ? `${header}\n` : '') + pieces.join('');
        const lines = text.split(/\r\n|\n|\r/).length;
        for (const { line } of readHygrometer(text).problems) {
          expect(line).toBeGreaterThanOrEqual(1);
          expect(line).toBeLessThanOrEqual(lines);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('refuses what is not text', () => {
    expect(() => readHygrometer(undefined as never)).toThrow(/csvText: the file's text is needed/);
  });
});

describe('a year of air from readings', () => {
  const wholeYear: HygrometerReading[] = Array.from({ length: 365 }, (_, day) => {
    const date = new Date(Date.UTC(2025, 5, 1 + day)).toISOString().slice(0, 10);
    const month = Number(date.slice(5, 7));
    return { date, temperatureC: 15 + month / 2, relativeHumidity: 0.3 + month / 100 };
  });

  it('is the mean of each month, whichever month they start in', () => {
    const year = yearOfAir({ readings: wholeYear });
    expect(year.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(year[1]).toMatchObject({ days: 28 });
    for (const { month, temperatureC, relativeHumidity } of year) {
      expect(temperatureC).toBeCloseTo(15 + month / 2, 9);
      expect(relativeHumidity).toBeCloseTo(0.3 + month / 100, 9);
    }
  });

  it('counts days alike however often they were read', () => {
    const often = Array.from({ length: 24 }, (_, hour) => ({
      date: `2026-01-10T${String(hour).padStart(2, '0')}:00`,
      temperatureC: 30,
      relativeHumidity: 0.9,
    }));
    const [january] = yearOfAir({ readings: [...wholeYear.filter(({ date }) => date !== '2026-01-10'), ...often] });
    expect(january?.temperatureC).toBeCloseTo((30 * 15.5 + 30) / 31, 9);
  });

  it('puts readings of one day together, with a time or without', () => {
    const onTenth = [
      { date: '2026-01-10', temperatureC: 30, relativeHumidity: 0.9 },
      { date: '2026-01-10T08:00', temperatureC: 20, relativeHumidity: 0.7 },
    ];
    const [january] = yearOfAir({ readings: [...wholeYear.filter(({ date }) => date !== '2026-01-10'), ...onTenth] });
    expect(january?.days).toBe(31);
    expect(january?.temperatureC).toBeCloseTo((30 * 15.5 + 25) / 31, 9);
  });

  it('names the months without a reading', () => {
    const readings = wholeYear.filter(({ date }) => !['02', '03'].includes(date.slice(5, 7)));
    expect(() => yearOfAir({ readings })).toThrow('readings: none in February, March; a year needs every month');
    expect(() => yearOfAir({ readings: wholeYear.filter(({ date }) => date.slice(5, 7) !== '12') })).toThrow(
      'readings: none in December; a year needs every month',
    );
    expect(() => yearOfAir({ readings: [] })).toThrow(/none in January, February/);
  });

  it('names the reading at fault when they were typed by hand', () => {
    expect(() => yearOfAir({ readings: [{ date: '2026-01-01', temperatureC: 20, relativeHumidity: 45 }] })).toThrow(
      /readings no\. 1, relativeHumidity: 45 given; .* so 45 % is written 0.45/,
    );
    expect(() => yearOfAir({ readings: { readings: [] } as never })).toThrow(
      /possible: the readings that readHygrometer/,
    );
  });
});
