import type { PatchOperation } from '../../src/base/applyPatch.js'

/** A good fixture with one change, and the findings of reading it: exactly these codes and places. */
export interface ShapeMistake {
  readonly of: string
  readonly patch: readonly PatchOperation[]
  readonly found: readonly (readonly [code: string, path: string])[]
}

const add = (path: string, value: unknown): PatchOperation => ({ op: 'add', path, value })
const replace = (path: string, value: unknown): PatchOperation => ({ op: 'replace', path, value })
const remove = (path: string): PatchOperation => ({ op: 'remove', path })
const move = (from: string, path: string): PatchOperation => ({ op: 'move', from, path })

const HUB = 'hub-reduction.sheet.json'
const COVER = 'cover-no-drain.sheet.json'
const TAPER = 'taper-plug.sheet.json'
const FLUID = 'maker-fluid-shared.sheet.json'
const LOG = 'full.machine-log.json'
const BOX = 'full.toolbox.json'
const STOCK = 'full.stock.json'
const PROCEDURE = 'full.procedure.json'
const RECORD = 'full.service-record.json'

const mistake = (of: string, patch: PatchOperation, code: string, path: string): ShapeMistake => ({
  of,
  patch: [patch],
  found: [[code, path]],
})

const plug = '/gearcases/hub/openings/hub-plug'
const fill = '/gearcases/hub/oilSpace/fill'
const cover = '/gearcases/rear/covers/rear-cover'

/** Mistakes that both the parse functions and the published JSON Schemas refuse. */
export const SHAPE_MISTAKES: readonly ShapeMistake[] = [
  // Head
  mistake(HUB, replace('/kind', 'spec sheet'), 'spec/wrong-kind', '/kind'),
  mistake(HUB, replace('/kind', 'invoice'), 'spec/wrong-kind', '/kind'),
  mistake(HUB, remove('/kind'), 'spec/missing-key', ''),
  mistake(HUB, replace('/kind', 7), 'spec/wrong-type', '/kind'),
  mistake(HUB, replace('/version', '1.1'), 'spec/wrong-version', '/version'),
  mistake(HUB, replace('/version', '2.0'), 'spec/wrong-version', '/version'),
  mistake(HUB, replace('/version', 1), 'spec/wrong-version', '/version'),
  mistake(HUB, replace('/version', ['1.0']), 'spec/wrong-type', '/version'),
  mistake(HUB, remove('/version'), 'spec/missing-key', ''),
  mistake(HUB, replace('', []), 'spec/wrong-type', ''),
  mistake(HUB, replace('', 'spec-sheet'), 'spec/wrong-type', ''),
  mistake(HUB, replace('', null), 'spec/wrong-type', ''),
  // Keys
  mistake(HUB, remove('/revision'), 'spec/missing-key', ''),
  mistake(HUB, move('/revision', '/revison'), 'spec/unknown-key', '/revison'),
  mistake(HUB, add('/colour', 'red'), 'spec/unknown-key', '/colour'),
  mistake(HUB, add(`${plug}/tightening/angle`, '30'), 'spec/unknown-key', `${plug}/tightening/angle`),
  mistake(HUB, move(`${plug}/place`, `${plug}/Place`), 'spec/unknown-key', `${plug}/Place`),
  mistake(
    HUB,
    move(`${fill}/drainAndRefill`, `${fill}/drain_and_refill`),
    'spec/unknown-key',
    `${fill}/drain_and_refill`,
  ),
  mistake(HUB, remove(`${fill}/method/kind`), 'spec/missing-key', `${fill}/method`),
  // Ids
  mistake(HUB, replace('/id', 'Brattli 18'), 'spec/bad-id', '/id'),
  mistake(HUB, replace('/id', ''), 'spec/bad-id', '/id'),
  mistake(HUB, replace('/id', `a${'b'.repeat(64)}`), 'spec/bad-id', '/id'),
  mistake(HUB, replace('/id', 'brattli\n'), 'spec/bad-id', '/id'),
  mistake(HUB, replace('/id', 'constructor'), 'spec/forbidden-key', '/id'),
  mistake(HUB, replace('/id', 18), 'spec/wrong-type', '/id'),
  mistake(
    HUB,
    add('/sources/Parts list', { title: 'Parts', document: 'parts list' }),
    'spec/bad-id',
    '/sources/Parts list',
  ),
  mistake(
    HUB,
    add('/sources/constructor', { title: 'Parts', document: 'parts list' }),
    'spec/forbidden-key',
    '/sources/constructor',
  ),
  mistake(
    HUB,
    add('/sources/__proto__', { title: 'Parts', document: 'parts list' }),
    'spec/forbidden-key',
    '/sources/__proto__',
  ),
  // Figures
  mistake(HUB, replace(`${fill}/dryFill/value`, '0,80'), 'spec/comma-decimal', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '1,250'), 'spec/comma-decimal', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, 0.8), 'spec/figure-without-quotes', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '.8'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '08'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '1e3'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '-1'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '1234567890'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '1.2345678'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '0.8\n'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, '½'), 'spec/bad-figure', `${fill}/dryFill/value`),
  mistake(HUB, replace(`${fill}/dryFill/value`, true), 'spec/wrong-type', `${fill}/dryFill/value`),
  mistake(
    HUB,
    replace(`${fill}/level/temperature/min`, '--5'),
    'spec/bad-figure',
    `${fill}/level/temperature/min`,
  ),
  // Lists of words
  mistake(HUB, replace(`${fill}/dryFill/unit`, 'l'), 'spec/not-in-list', `${fill}/dryFill/unit`),
  mistake(HUB, replace(`${fill}/dryFill/unit`, 'N.m'), 'spec/not-in-list', `${fill}/dryFill/unit`),
  mistake(HUB, replace(`${fill}/dryFill/unit`, 3), 'spec/wrong-type', `${fill}/dryFill/unit`),
  mistake(
    HUB,
    replace(`${fill}/dryFill/kind`, 'nominal with tolerences'),
    'spec/not-in-list',
    `${fill}/dryFill/kind`,
  ),
  mistake(
    HUB,
    replace(`${plug}/tightening/threadCondition`, 'wet'),
    'spec/not-in-list',
    `${plug}/tightening/threadCondition`,
  ),
  mistake(HUB, replace(`${plug}/uses/0/role`, 'Drain'), 'spec/not-in-list', `${plug}/uses/0/role`),
  mistake(HUB, replace(`${plug}/tightening/kind`, 'moment'), 'spec/not-in-list', `${plug}/tightening/kind`),
  mistake(HUB, replace('/gearcases/hub/type', 'differenzial'), 'spec/not-in-list', '/gearcases/hub/type'),
  mistake(
    FLUID,
    replace('/services/fluid/events/0', 'flood'),
    'spec/not-in-list',
    '/services/fluid/events/0',
  ),
  mistake(
    FLUID,
    replace('/gearcases/axle/oilSpace/kind', 'common'),
    'spec/not-in-list',
    '/gearcases/axle/oilSpace/kind',
  ),
  // Rules that the shape checks
  mistake(
    STOCK,
    replace('/seals/ring-16/seal/size/thickness', '0.0'),
    'seal/zero-size',
    '/seals/ring-16/seal/size/thickness',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat', { kind: 'interval' }),
    'spec/interval-empty',
    '/services/rear-oil/intervals/repeat',
  ),
  mistake(
    COVER,
    add('/services/rear-oil/intervals/window', { kind: 'interval' }),
    'spec/interval-empty',
    '/services/rear-oil/intervals/window',
  ),
  mistake(
    COVER,
    add('/services/rear-oil/intervals/repeat/period', 'P0Y0M0W0D'),
    'interval/limit-not-above-zero',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    add('/services/rear-oil/intervals/repeat/distance', { value: '0', unit: 'km' }),
    'interval/limit-not-above-zero',
    '/services/rear-oil/intervals/repeat/distance',
  ),
  mistake(
    HUB,
    replace(`${fill}/dryFill`, { kind: 'limits', unit: 'L' }),
    'spec/limits-empty',
    `${fill}/dryFill`,
  ),
  mistake(
    HUB,
    add(`${fill}/dryFill/printed`, [{ kind: 'limits', unit: 'L' }]),
    'spec/limits-empty',
    `${fill}/dryFill/printed/0`,
  ),
  // Dates, periods, pointers
  mistake(COVER, add('/sources/bulletin/date', '2027-02-29'), 'spec/bad-date', '/sources/bulletin/date'),
  mistake(COVER, add('/sources/bulletin/date', '2100-02-29'), 'spec/bad-date', '/sources/bulletin/date'),
  mistake(COVER, add('/sources/bulletin/date', '0000-01-01'), 'spec/bad-date', '/sources/bulletin/date'),
  mistake(COVER, add('/sources/bulletin/date', '20280229'), 'spec/bad-date', '/sources/bulletin/date'),
  mistake(COVER, add('/sources/bulletin/date', '2028-04-31'), 'spec/bad-date', '/sources/bulletin/date'),
  mistake(
    COVER,
    add('/services/rear-oil/intervals/repeat/hours', '1000000'),
    'spec/interval-too-long',
    '/services/rear-oil/intervals/repeat/hours',
  ),
  mistake(
    COVER,
    add('/services/rear-oil/intervals/repeat/hours', '1e3'),
    'spec/bad-figure',
    '/services/rear-oil/intervals/repeat/hours',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', '6 months'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P1.5M'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'PT500H'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P1M2Y'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/0/path', 'gearcases/rear'),
    'spec/bad-pointer',
    '/overrides/0/set/0/path',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/0/path', '/gearcases/~2'),
    'spec/bad-pointer',
    '/overrides/0/set/0/path',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/2/to', { kind: 'place', text: 'x' }),
    'spec/not-in-list',
    '/overrides/0/set/2/to/kind',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/0/to/value', '-2.5'),
    'spec/bad-figure',
    '/overrides/0/set/0/to/value',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/0/to/value', 2.5),
    'spec/figure-without-quotes',
    '/overrides/0/set/0/to/value',
  ),
  mistake(
    COVER,
    replace('/overrides/0/set/0/to/unit', 'litre'),
    'spec/not-in-list',
    '/overrides/0/set/0/to/unit',
  ),
  mistake(COVER, remove('/overrides/0/set/0/to/unit'), 'spec/missing-key', '/overrides/0/set/0/to'),
  mistake(
    COVER,
    replace('/overrides/0/set/0/to/kind', 'nominel'),
    'spec/not-in-list',
    '/overrides/0/set/0/to/kind',
  ),
  // Types, empty values, numbers
  mistake(COVER, replace(`${cover}/bolts/count`, 0), 'spec/number-too-small', `${cover}/bolts/count`),
  mistake(COVER, replace(`${cover}/bolts/count`, 2.5), 'spec/wrong-type', `${cover}/bolts/count`),
  mistake(COVER, replace(`${cover}/bolts/count`, '10'), 'spec/wrong-type', `${cover}/bolts/count`),
  mistake(COVER, replace(`${cover}/bolts/count`, 1e300), 'spec/number-too-large', `${cover}/bolts/count`),
  mistake(COVER, replace(`${cover}/magnet`, 'yes'), 'spec/wrong-type', `${cover}/magnet`),
  mistake(COVER, replace('/gearcases/rear/emptying', {}), 'spec/wrong-type', '/gearcases/rear/emptying'),
  mistake(
    COVER,
    replace('/gearcases/rear/oilSpace/oils/choices', []),
    'spec/empty-list',
    '/gearcases/rear/oilSpace/oils/choices',
  ),
  mistake(
    COVER,
    replace('/gearcases/rear/openings/filler/uses', []),
    'spec/empty-list',
    '/gearcases/rear/openings/filler/uses',
  ),
  mistake(COVER, replace('/machine/make', ''), 'spec/empty-text', '/machine/make'),
  mistake(COVER, replace('/machine/make', null), 'spec/wrong-type', '/machine/make'),
  mistake(COVER, replace('/gearcases', []), 'spec/wrong-type', '/gearcases'),
  mistake(TAPER, replace('/machine/axles', 'none'), 'spec/wrong-type', '/machine/axles'),
  // Two mistakes are two findings, even if one is a key and the other is below it
  {
    of: TAPER,
    patch: [
      replace('/gearcases/transfer/openings/fill/tightening/min', '1,5'),
      move('/gearcases/transfer', '/gearcases/Transfer'),
      remove('/gearcases/Transfer/type'),
    ],
    found: [
      ['spec/bad-id', '/gearcases/Transfer'],
      ['spec/comma-decimal', '/gearcases/Transfer/openings/fill/tightening/min'],
      ['spec/missing-key', '/gearcases/Transfer'],
    ],
  },
  {
    of: TAPER,
    patch: [
      replace('/gearcases/transfer/openings/fill/tightening/kind', 'turn'),
      replace('/gearcases/transfer/openings/fill/tightening/max', 3),
    ],
    found: [
      ['spec/not-in-list', '/gearcases/transfer/openings/fill/tightening/kind'],
      ['spec/figure-without-quotes', '/gearcases/transfer/openings/fill/tightening/max'],
    ],
  },
  // The other documents
  mistake(LOG, replace('/identity/modelYear', '2028'), 'spec/wrong-type', '/identity/modelYear'),
  mistake(
    LOG,
    replace('/meters/hours/readings/0/value', -1),
    'spec/number-too-small',
    '/meters/hours/readings/0/value',
  ),
  mistake(LOG, replace('/meters/hours/rollover', 0), 'spec/number-too-small', '/meters/hours/rollover'),
  mistake(LOG, replace('/meters/hours/unit', 'km'), 'spec/not-in-list', '/meters/hours/unit'),
  mistake(
    LOG,
    replace('/meters/hours/readings/0/date', '1 March 2028'),
    'spec/bad-date',
    '/meters/hours/readings/0/date',
  ),
  mistake(LOG, remove('/events/0/oldReading'), 'spec/missing-key', '/events/0'),
  mistake(LOG, replace('/events/3/kind', 'submerged'), 'spec/not-in-list', '/events/3/kind'),
  mistake(LOG, replace('/use', 'heavy'), 'spec/not-in-list', '/use'),
  mistake(LOG, replace('/records/1/detail', 'short'), 'spec/not-in-list', '/records/1/detail'),
  mistake(LOG, remove('/pauses/0/to'), 'spec/missing-key', '/pauses/0'),
  mistake(
    BOX,
    replace('/wrenches/middle-wrench/scales', []),
    'spec/empty-list',
    '/wrenches/middle-wrench/scales',
  ),
  mistake(
    BOX,
    replace('/wrenches/middle-wrench/accuracy/kind', 'ISO6789'),
    'spec/not-in-list',
    '/wrenches/middle-wrench/accuracy/kind',
  ),
  mistake(
    BOX,
    replace('/wrenches/shop-dial/accuracy/percent', 0),
    'spec/number-too-small',
    '/wrenches/shop-dial/accuracy/percent',
  ),
  mistake(
    BOX,
    replace('/fillers/long-hose/hose/bore/unit', 'inch'),
    'spec/not-in-list',
    '/fillers/long-hose/hose/bore/unit',
  ),
  mistake(BOX, replace('/chocks', 1.5), 'spec/wrong-type', '/chocks'),
  mistake(
    STOCK,
    replace('/containers/fjellgir-1l/price/currency', 'kr'),
    'spec/bad-currency',
    '/containers/fjellgir-1l/price/currency',
  ),
  mistake(STOCK, replace('/containers/quart/count', -1), 'spec/number-too-small', '/containers/quart/count'),
  mistake(
    STOCK,
    replace('/containers/quart/size/value', '1'),
    'spec/wrong-type',
    '/containers/quart/size/value',
  ),
  mistake(STOCK, remove('/seals/odd/seal/kind'), 'spec/missing-key', '/seals/odd/seal'),
  mistake(PROCEDURE, replace('/steps/0/do', 'read manual'), 'spec/not-in-list', '/steps/0/do'),
  mistake(PROCEDURE, replace('/steps/1/at/wheelMark', 'down'), 'spec/not-in-list', '/steps/1/at/wheelMark'),
  mistake(PROCEDURE, replace('/steps/1/on', 'hub'), 'spec/bad-pointer', '/steps/1/on'),
  mistake(PROCEDURE, add('/steps/2/values/', '/gearcases'), 'spec/empty-text', '/steps/2/values/'),
  mistake(
    PROCEDURE,
    add('/steps/2/values/prototype', '/gearcases'),
    'spec/forbidden-key',
    '/steps/2/values/prototype',
  ),
  mistake(RECORD, replace('/photos/0/sha256', 'E3B0'), 'spec/bad-sha256', '/photos/0/sha256'),
  mistake(RECORD, replace('/entries/0/drained', 'unknown'), 'spec/bad-notation', '/entries/0/drained'),
  mistake(RECORD, replace('/entries/0/drained/value', 'much'), 'spec/wrong-type', '/entries/0/drained/value'),
  mistake(RECORD, replace('/entries/0/drained/unit', 'litre'), 'spec/not-in-list', '/entries/0/drained/unit'),
  mistake(RECORD, replace('/entries/0/drained', 3), 'spec/wrong-type', '/entries/0/drained'),
  mistake(
    RECORD,
    replace('/entries/0/tightened/0/kind', 'torque'),
    'spec/not-in-list',
    '/entries/0/tightened/0/kind',
  ),
  mistake(RECORD, replace('/entries/0/opened/0', 'drain plug'), 'spec/bad-pointer', '/entries/0/opened/0'),
  mistake(RECORD, remove('/readings'), 'spec/missing-key', ''),
  mistake(RECORD, replace('/readings/hours/value', -0.1), 'spec/number-too-small', '/readings/hours/value'),
  mistake(
    RECORD,
    move('/entries/0/drained/unit', '/entries/0/drained/units'),
    'spec/unknown-key',
    '/entries/0/drained/units',
  ),
  {
    of: RECORD,
    patch: [add('/nots', 'x'), add('/entries/0/drained/mark', 1), remove('/entries/0/drained/value')],
    found: [
      ['spec/unknown-key', '/nots'],
      ['spec/unknown-key', '/entries/0/drained/mark'],
      ['spec/missing-key', '/entries/0/drained'],
    ],
  },
]
