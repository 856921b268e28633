import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, test } from 'vitest';
import { readWeather, weatherDay } from '#lib/forms/weather.ts';
import { plainDate } from '#lib/units/plain-date.ts';

const TODAY = plainDate('2025-09-12');
const read = (text: string, unit: 'C' | 'F' = 'C') => readWeather(text, unit, TODAY);

/** Daily weather of Seattle 2012-2015 (U.S. Government work, npm package vega-datasets 3.2.1), as it comes. */
test('a real file of 1,461 days is read by the names of its columns', () => {
  const file = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);
  const { days, refused, blank } = read(readFileSync(file, 'utf8'));
  assert.deepEqual([days.length, refused, blank], [1461, [], 0]);
  assert.deepEqual(days[0], { day: '2012-01-01', low: '5.0', high: '12.8', rain: '0.0' });
});

describe('what is taken', () => {
  test.each([
    ['2025-04-12,-1.5,11,0.4', ['2025-04-12', -1.5, 11, 0.4]],
    ['12.4.2025;-1,5;11;', ['2025-04-12', -1.5, 11, null]],
    ['20250412\t-1.5\t11', ['2025-04-12', -1.5, 11, null]],
    ['max,min,date\n11,-1.5,2025/4/12', ['2025-04-12', -1.5, 11, null]],
    ['"2025-04-12","−1.5","11"', ['2025-04-12', -1.5, 11, null]],
  ])('%j', (text, [day, low, high, rain]) => {
    const { days, refused } = read(text);
    assert.deepEqual(refused, []);
    assert.deepEqual(
      days.map((d) => weatherDay(d, 'C')),
      [{ day, low, high, rain }],
    );
  });
  test('degrees Fahrenheit are kept as typed and read as Celsius', () => {
    const [day] = read('2025-04-12,28,50', 'F').days;
    assert.ok(day);
    assert.equal(day.low, '28');
    assert.ok(Math.abs(weatherDay(day, 'F').low - -2.2222) < 1e-4);
  });
  test('a line without a figure is left out and counted', () =>
    assert.deepEqual(
      [read('2025-04-11,1,9\n2025-04-12,NA,NA').days.length, read('2025-04-11,1,9\n2025-04-12,,').blank],
      [1, 1],
    ));
});

describe('what is refused, line by line', () => {
  test.each([
    ['2025-04-12,11,-1.5', 'Line 1: the highest, -1.5, is below the lowest, 11'],
    ['2025-04-12,1,9\n2025-04-31,1,9', 'Line 2: "2025-04-31" is not a day of the calendar (2025-04-12)'],
    ['2025-09-13,1,9', 'Line 1: 2025-09-13 has not been yet'],
    ['2025-04-12,cold,9', 'Line 1: "cold" is not a number'],
    ['2025-04-12,1,99', 'Line 1: 1 to 99 °C is beyond anything measured outdoors'],
    ['2025-04-12,1,9\n2025-04-12,1,9', 'Line 2: 2025-04-12 stands in line 1 as well'],
    ['2025-04-12,1,9,-3', 'Line 1: rain: "-3" is below zero'],
    ['date,wind\n2025-04-12,3', 'The first line is neither a day nor names: no column is called min or max'],
    ['4/12/2025,1,9', 'The first line is neither a day nor names: no column is called date or min or max'],
    ['', 'there is no line in it'],
  ])('%j', (text, why) => assert.deepEqual(read(text).refused, [why]));
});

describe('what is strange is taken and named', () => {
  test.each([
    ['2025-04-12,1,46', 'rare anywhere'],
    ['2025-04-12,1,33', 'a swing of more than 30 °C'],
    ['2025-04-11,20,30\n2025-04-12,-2,4', 'more than 20 °C from the day before'],
    ['2025-04-12,1,9,250', '250 mm of rain'],
  ])('%j', (text, why) => {
    const { doubtful, refused } = read(text);
    assert.deepEqual(refused, []);
    assert.equal(doubtful.length, 1);
    assert.ok(doubtful[0]?.includes(why), doubtful[0]);
  });
});
