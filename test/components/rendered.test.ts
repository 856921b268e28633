import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { test } from 'vitest';
import { DayMover } from '#components/day-mover.tsx';
import { Field } from '#components/field.tsx';
import { HarvestPad } from '#components/harvest-pad.tsx';
import { JarRow } from '#components/jar-row.tsx';
import { placeOfPath } from '#components/nav-places.ts';
import { PlanCard, type PlanCardProps } from '#components/plan-card.tsx';
import { Refusal } from '#components/refusal.tsx';
import { ShelfPicture } from '#components/shelf-picture.tsx';
import { StatusMark, type StatusState } from '#components/status-mark.tsx';
import { plainDate } from '#lib/units/plain-date.ts';

const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

test('no screen says a word the program must not say', () => {
  const folder = new URL('../../components/', import.meta.url);
  const files = readdirSync(folder).filter((f) => /\.tsx?$/.test(f));
  assert.ok(files.length > 40);
  for (const file of files) {
    assert.doesNotMatch(
      readFileSync(new URL(file, folder), 'utf8'),
      /\b(safe|safely|safety|unsafe|probabl[ey]|likely|unlikely)\b/i,
      file,
    );
  }
});

test('a field ties its hint and its error to the control and keeps what was typed', () => {
  const html = renderToStaticMarkup(
    createElement(Field, {
      name: 'kg',
      label: 'Fruit',
      hint: 'Weigh it.',
      error: '0.20 kg too much.',
      defaultValue: '3,20',
    }),
  );
  const described = /aria-describedby="([^"]+)"/.exec(html)?.[1]?.split(' ') ?? [];
  assert.equal(described.length, 2);
  for (const id of described) assert.ok(html.includes(`id="${id}"`), id);
  assert.match(html, /aria-invalid="true"/);
  assert.match(html, /value="3,20"/);
});

test('states differ by shape or word, not by colour alone', () => {
  const states: StatusState[] = [
    'sealed',
    'hold',
    'due',
    'late',
    'unsealed',
    'unknown',
    'waiting',
    'doubtful',
    'planned',
    'not-as-tested',
  ];
  const shapes = states.map(
    (state) => /d="([^"]+)"/.exec(renderToStaticMarkup(createElement(StatusMark, { state })))?.[1],
  );
  assert.equal(new Set(shapes).size, states.length);
  assert.match(text(renderToStaticMarkup(createElement(StatusMark, { state: 'hold' }))), /on hold/);
});

const card: PlanCardProps = {
  title: 'Plan',
  gramsKept: 12340,
  gramsLost: 900,
  jars: [{ label: 'half-pints', count: 12 }],
  lidsLeft: 2,
  minutes: 205,
  bindingLimit: 'lids',
  gap: 0.021,
};
test('a plan says what it keeps in both units, what is still lost, its limit and its distance from the proven bound', () => {
  const said = text(renderToStaticMarkup(createElement(PlanCard, card)));
  for (const part of [
    '12.34 kg',
    '27.2 lb',
    '0.90 kg',
    'What stops more: lids',
    'Within 2.1 % of the proven bound',
    '3 h 25 min',
  ])
    assert.ok(said.includes(part), part);
});
test('a plan without a proven bound does not claim one', () => {
  assert.match(text(renderToStaticMarkup(createElement(PlanCard, { ...card, gap: null }))), /No bound proven/);
});

test('a refusal gives its cause and every way out', () => {
  const said = text(
    renderToStaticMarkup(
      createElement(Refusal, { cause: 'No tested time for quarts of jam.', waysOut: ['Use pints.', 'Freeze it.'] }),
    ),
  );
  for (const part of ['quarts of jam', 'Use pints.', 'Freeze it.']) assert.ok(said.includes(part), part);
});

test('jars on hold cannot be taken, given or sold from their row', () => {
  const jar = {
    lot: '25256-DAM-A',
    label: 'Damson jam',
    foodId: 'damson',
    product: 'jam',
    count: 3,
    size: 'half-pint',
    made: 'made',
    bestBefore: 'best before',
    address: 'B2-S1',
    href: '/x',
    takeOne: '/take',
    giveHref: '/give',
    sellHref: '/sell',
  };
  assert.match(renderToStaticMarkup(createElement(JarRow, jar)), /Take one.*\/give.*\/sell/);
  assert.doesNotMatch(renderToStaticMarkup(createElement(JarRow, { ...jar, state: 'hold' })), /Take one|\/give|\/sell/);
});

test('the shelf picture has a table in words with every line, drawn or not', () => {
  const kind = { pitchMm: 96, heightMm: 178 };
  const html = renderToStaticMarkup(
    createElement(ShelfPicture, {
      shelves: [
        {
          address: 'B3-S2',
          widthMm: 900,
          depthMm: 320,
          clearMm: 230,
          jars: [
            { line: 'juice', label: 'Apple juice', foodColour: '#b9a24a', jarKind: kind, count: 27 },
            { line: 'plums', label: 'Plums in syrup', foodColour: '#6e2a3c', jarKind: kind, count: 5, planned: true },
          ],
        },
      ],
    }),
  );
  const table = text(html.slice(html.indexOf('<table')));
  assert.match(table, /B3-S2 Apple juice 27 jars B3-S2 Plums in syrup \(planned\) 5 jars/);
  assert.match(text(html), /No room here:.*Plums in syrup 5/);
  assert.match(text(html), /96 % full/);
});

test('the day mover offers the next day, every day of the list and any day, all as `day`', () => {
  const html = renderToStaticMarkup(
    createElement(DayMover, {
      today: plainDate('2025-09-12'),
      action: '/day',
      quickDays: [{ day: plainDate('2026-01-15'), label: 'January' }],
    }),
  );
  for (const day of ['2025-09-13', '2026-01-15'])
    assert.match(html, new RegExp(`<button[^>]*value="${day}"[^>]*name="day"`));
  assert.match(html, /type="date" [^>]*name="day"|name="day"[^>]*type="date"/);
});

test('without a script the shed screen is a plain form', () => {
  const html = renderToStaticMarkup(
    createElement(HarvestPad, {
      rows: [{ id: 'D3', label: 'row D3', cropId: 'damson', cropLabel: 'Damson', usualKg: 12, usualContainer: null }],
      containers: [{ id: 'lug', label: 'lug', tareG: 950 }],
      day: plainDate('2025-09-12'),
      queue: { waiting: 4, lastSent: '17:42' },
      onRecord: async () => ({ ok: true }) as const,
      action: '/harvest',
    }),
  );
  const plain = html.slice(html.indexOf('<noscript>'), html.indexOf('</noscript>'));
  for (const name of ['day', 'row', 'gross', 'unit', 'container', 'containerCount', 'grade-soft', 'groundFall'])
    assert.ok(plain.includes(`name="${name}"`), name);
  assert.match(text(html), /4 waiting to send, last sent 17:42/);
});

test('an address belongs to its place', () => {
  assert.equal(placeOfPath('/'), 'today');
  assert.equal(placeOfPath('/batches/25256-DAM-A'), 'batches');
  assert.equal(placeOfPath('/plan'), 'plan');
  assert.equal(placeOfPath('/planet'), null);
});
