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

const one = (of: string, patch: PatchOperation, code: string, path: string): ShapeMistake => ({
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
  one(HUB, replace('/kind', 'spec sheet'), 'spec/wrong-kind', '/kind'),
  one(HUB, replace('/kind', 'invoice'), 'spec/wrong-kind', '/kind'),
  one(HUB, remove('/kind'), 'spec/missing-key', ''),
  one(HUB, replace('/kind', 7), 'spec/wrong-type', '/kind'),
  one(HUB, replace('/version', '1.1'), 'spec/wrong-version', '/version'),
  one(HUB, replace('/version', '2.0'), 'spec/wrong-version', '/version'),
  one(HUB, replace('/version', 1), 'spec/wrong-version', '/version'),
  one(HUB, replace('/version', ['1.0']), 'spec/wrong-type', '/version'),
  one(HUB, remove('/version'), 'spec/missing-key', ''),
  one(HUB, replace('', []), 'spec/wrong-type', ''),
  one(HUB, replace('', 'spec-sheet'), 'spec/wrong-type', ''),
  one(HUB, replace('', null), 'spec/wrong-type', ''),
  // Keys
  one(HUB, remove('/revision'), 'spec/missing-key', ''),
  one(HUB, move('/revision', '/revison'), 'spec/unknown-key', '/revison'),
  one(HUB, add('/colour', 'red'), 'spec/unknown-key', '/colour'),
  one(HUB, add(`${plug}/tightening/angle`, '30'), 'spec/unknown-key', `${plug}/tightening/angle`),
  one(HUB, move(`${plug}/place`, `${plug}/Place`), 'spec/unknown-key', `${plug}/Place`),
  one(
    HUB,
    move(`${fill}/drainAndRefill`, `${fill}/drain_and_refill`),
    'spec/unknown-key',
    `${fill}/drain_and_refill`,
  ),
  one(HUB, remove(`${fill}/method/kind`), 'spec/missing-key', `${fill}/method`),
  // Ids
  one(HUB, replace('/id', 'Brattli 18'), 'spec/bad-id', '/id'),
  one(HUB, replace('/id', ''), 'spec/bad-id', '/id'),
  one(HUB, replace('/id', `a${'b'.repeat(64)}`), 'spec/bad-id', '/id'),
  one(HUB, replace('/id', 'brattli\n'), 'spec/bad-id', '/id'),
  one(HUB, replace('/id', 'constructor'), 'spec/forbidden-key', '/id'),
  one(HUB, replace('/id', 18), 'spec/wrong-type', '/id'),
  one(
    HUB,
    add('/sources/Parts list', { title: 'Parts', document: 'parts list' }),
    'spec/bad-id',
    '/sources/Parts list',
  ),
  one(
    HUB,
    add('/sources/constructor', { title: 'Parts', document: 'parts list' }),
    'spec/forbidden-key',
    '/sources/constructor',
  ),
  one(
    HUB,
    add('/sources/__proto__', { title: 'Parts', document: 'parts list' }),
    'spec/forbidden-key',
    '/sources/__proto__',
  ),
  // Figures
  one(HUB, replace(`${fill}/dryFill/value`, '0,80'), 'spec/comma-decimal', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '1,250'), 'spec/comma-decimal', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, 0.8), 'spec/figure-without-quotes', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '.8'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '08'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '1e3'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '-1'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '1234567890'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '1.2345678'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '0.8\n'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, '½'), 'spec/bad-figure', `${fill}/dryFill/value`),
  one(HUB, replace(`${fill}/dryFill/value`, true), 'spec/wrong-type', `${fill}/dryFill/value`),
  one(
    HUB,
    replace(`${fill}/level/temperature/min`, '--5'),
    'spec/bad-figure',
    `${fill}/level/temperature/min`,
  ),
  // Lists of words
  one(HUB, replace(`${fill}/dryFill/unit`, 'l'), 'spec/not-in-list', `${fill}/dryFill/unit`),
  one(HUB, replace(`${fill}/dryFill/unit`, 'N.m'), 'spec/not-in-list', `${fill}/dryFill/unit`),
  one(HUB, replace(`${fill}/dryFill/unit`, 3), 'spec/wrong-type', `${fill}/dryFill/unit`),
  one(
    HUB,
    replace(`${fill}/dryFill/kind`, 'nominal with tolerences'),
    'spec/not-in-list',
    `${fill}/dryFill/kind`,
  ),
  one(
    HUB,
    replace(`${plug}/tightening/threadCondition`, 'wet'),
    'spec/not-in-list',
    `${plug}/tightening/threadCondition`,
  ),
  one(HUB, replace(`${plug}/uses/0/role`, 'Drain'), 'spec/not-in-list', `${plug}/uses/0/role`),
  one(HUB, replace(`${plug}/tightening/kind`, 'moment'), 'spec/not-in-list', `${plug}/tightening/kind`),
  one(HUB, replace('/gearcases/hub/type', 'differenzial'), 'spec/not-in-list', '/gearcases/hub/type'),
  one(FLUID, replace('/services/fluid/events/0', 'flood'), 'spec/not-in-list', '/services/fluid/events/0'),
  one(
    FLUID,
    replace('/gearcases/axle/oilSpace/kind', 'common'),
    'spec/not-in-list',
    '/gearcases/axle/oilSpace/kind',
  ),
  // Rules that the shape checks
  one(
    STOCK,
    replace('/seals/ring-16/seal/size/thickness', '0.0'),
    'seal/zero-size',
    '/seals/ring-16/seal/size/thickness',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat', { kind: 'interval' }),
    'spec/interval-empty',
    '/services/rear-oil/intervals/repeat',
  ),
  one(
    COVER,
    add('/services/rear-oil/intervals/window', { kind: 'interval' }),
    'spec/interval-empty',
    '/services/rear-oil/intervals/window',
  ),
  one(
    COVER,
    add('/services/rear-oil/intervals/repeat/period', 'P0Y0M0W0D'),
    'interval/limit-not-above-zero',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    add('/services/rear-oil/intervals/repeat/distance', { value: '0', unit: 'km' }),
    'interval/limit-not-above-zero',
    '/services/rear-oil/intervals/repeat/distance',
  ),
  one(HUB, replace(`${fill}/dryFill`, { kind: 'limits', unit: 'L' }), 'spec/limits-empty', `${fill}/dryFill`),
  one(
    HUB,
    add(`${fill}/dryFill/printed`, [{ kind: 'limits', unit: 'L' }]),
    'spec/limits-empty',
    `${fill}/dryFill/printed/0`,
  ),
  // Dates, periods, pointers
  one(COVER, add('/sources/bulletin/date', '2027-02-29'), 'spec/bad-date', '/sources/bulletin/date'),
  one(COVER, add('/sources/bulletin/date', '2100-02-29'), 'spec/bad-date', '/sources/bulletin/date'),
  one(COVER, add('/sources/bulletin/date', '0000-01-01'), 'spec/bad-date', '/sources/bulletin/date'),
  one(COVER, add('/sources/bulletin/date', '20280229'), 'spec/bad-date', '/sources/bulletin/date'),
  one(COVER, add('/sources/bulletin/date', '2028-04-31'), 'spec/bad-date', '/sources/bulletin/date'),
  one(
    COVER,
    add('/services/rear-oil/intervals/repeat/hours', '1000000'),
    'spec/interval-too-long',
    '/services/rear-oil/intervals/repeat/hours',
  ),
  one(
    COVER,
    add('/services/rear-oil/intervals/repeat/hours', '1e3'),
    'spec/bad-figure',
    '/services/rear-oil/intervals/repeat/hours',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', '6 months'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P1.5M'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'PT500H'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    replace('/services/rear-oil/intervals/repeat/period', 'P1M2Y'),
    'spec/bad-period',
    '/services/rear-oil/intervals/repeat/period',
  ),
  one(
    COVER,
    replace('/overrides/0/set/0/path', 'gearcases/rear'),
    'spec/bad-pointer',
    '/overrides/0/set/0/path',
  ),
  one(
    COVER,
    replace('/overrides/0/set/0/path', '/gearcases/~2'),
    'spec/bad-pointer',
    '/overrides/0/set/0/path',
  ),
  one(
    COVER,
    replace('/overrides/0/set/2/to', { kind: 'place', text: 'x' }),
    'spec/not-in-list',
    '/overrides/0/set/2/to/kind',
  ),
  one(
    COVER,
    replace('/overrides/0/set/0/to/value', '-2.5'),
    'spec/bad-figure',
    '/overrides/0/set/0/to/value',
  ),
  one(
    COVER,
    replace('/overrides/0/set/0/to/value', 2.5),
    'spec/figure-without-quotes',
    '/overrides/0/set/0/to/value',
  ),
  one(
    COVER,
    replace('/overrides/0/set/0/to/unit', 'litre'),
    'spec/not-in-list',
    '/overrides/0/set/0/to/unit',
  ),
  one(COVER, remove('/overrides/0/set/0/to/unit'), 'spec/missing-key', '/overrides/0/set/0/to'),
  one(
    COVER,
    replace('/overrides/0/set/0/to/kind', 'nominel'),
    'spec/not-in-list',
    '/overrides/0/set/0/to/kind',
  ),
  // Types, empty values, numbers
  one(COVER, replace(`${cover}/bolts/count`, 0), 'spec/number-too-small', `${cover}/bolts/count`),
  one(COVER, replace(`${cover}/bolts/count`, 2.5), 'spec/wrong-type', `${cover}/bolts/count`),
  one(COVER, replace(`${cover}/bolts/count`, '10'), 'spec/wrong-type', `${cover}/bolts/count`),
  one(COVER, replace(`${cover}/bolts/count`, 1e300), 'spec/number-too-large', `${cover}/bolts/count`),
  one(COVER, replace(`${cover}/magnet`, 'yes'), 'spec/wrong-type', `${cover}/magnet`),
  one(COVER, replace('/gearcases/rear/emptying', {}), 'spec/wrong-type', '/gearcases/rear/emptying'),
  one(
    COVER,
    replace('/gearcases/rear/oilSpace/oils/choices', []),
    'spec/empty-list',
    '/gearcases/rear/oilSpace/oils/choices',
  ),
  one(
    COVER,
    replace('/gearcases/rear/openings/filler/uses', []),
    'spec/empty-list',
    '/gearcases/rear/openings/filler/uses',
  ),
  one(COVER, replace('/machine/make', ''), 'spec/empty-text', '/machine/make'),
  one(COVER, replace('/machine/make', null), 'spec/wrong-type', '/machine/make'),
  one(COVER, replace('/gearcases', []), 'spec/wrong-type', '/gearcases'),
  one(TAPER, replace('/machine/axles', 'none'), 'spec/wrong-type', '/machine/axles'),
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
  one(LOG, replace('/identity/modelYear', '2028'), 'spec/wrong-type', '/identity/modelYear'),
  one(
    LOG,
    replace('/meters/hours/readings/0/value', -1),
    'spec/number-too-small',
    '/meters/hours/readings/0/value',
  ),
  one(LOG, replace('/meters/hours/rollover', 0), 'spec/number-too-small', '/meters/hours/rollover'),
  one(LOG, replace('/meters/hours/unit', 'km'), 'spec/not-in-list', '/meters/hours/unit'),
  one(
    LOG,
    replace('/meters/hours/readings/0/date', '1 March 2028'),
    'spec/bad-date',
    '/meters/hours/readings/0/date',
  ),
  one(LOG, remove('/events/0/oldReading'), 'spec/missing-key', '/events/0'),
  one(LOG, replace('/events/3/kind', 'submerged'), 'spec/not-in-list', '/events/3/kind'),
  one(LOG, replace('/use', 'heavy'), 'spec/not-in-list', '/use'),
  one(LOG, replace('/records/1/detail', 'short'), 'spec/not-in-list', '/records/1/detail'),
  one(LOG, remove('/pauses/0/to'), 'spec/missing-key', '/pauses/0'),
  one(
    BOX,
    replace('/wrenches/middle-wrench/scales', []),
    'spec/empty-list',
    '/wrenches/middle-wrench/scales',
  ),
  one(
    BOX,
    replace('/wrenches/middle-wrench/accuracy/kind', 'ISO6789'),
    'spec/not-in-list',
    '/wrenches/middle-wrench/accuracy/kind',
  ),
  one(
    BOX,
    replace('/wrenches/shop-dial/accuracy/percent', 0),
    'spec/number-too-small',
    '/wrenches/shop-dial/accuracy/percent',
  ),
  one(
    BOX,
    replace('/fillers/long-hose/hose/bore/unit', 'inch'),
    'spec/not-in-list',
    '/fillers/long-hose/hose/bore/unit',
  ),
  one(BOX, replace('/chocks', 1.5), 'spec/wrong-type', '/chocks'),
  one(
    STOCK,
    replace('/containers/fjellgir-1l/price/currency', 'kr'),
    'spec/bad-currency',
    '/containers/fjellgir-1l/price/currency',
  ),
  one(STOCK, replace('/containers/quart/count', -1), 'spec/number-too-small', '/containers/quart/count'),
  one(STOCK, replace('/containers/quart/size/value', '1'), 'spec/wrong-type', '/containers/quart/size/value'),
  one(STOCK, remove('/seals/odd/seal/kind'), 'spec/missing-key', '/seals/odd/seal'),
  one(PROCEDURE, replace('/steps/0/do', 'read manual'), 'spec/not-in-list', '/steps/0/do'),
  one(PROCEDURE, replace('/steps/1/at/wheelMark', 'down'), 'spec/not-in-list', '/steps/1/at/wheelMark'),
  one(PROCEDURE, replace('/steps/1/on', 'hub'), 'spec/bad-pointer', '/steps/1/on'),
  one(PROCEDURE, add('/steps/2/values/', '/gearcases'), 'spec/empty-text', '/steps/2/values/'),
  one(
    PROCEDURE,
    add('/steps/2/values/prototype', '/gearcases'),
    'spec/forbidden-key',
    '/steps/2/values/prototype',
  ),
  one(RECORD, replace('/photos/0/sha256', 'E3B0'), 'spec/bad-sha256', '/photos/0/sha256'),
  one(RECORD, replace('/entries/0/drained', 'unknown'), 'spec/bad-notation', '/entries/0/drained'),
  one(RECORD, replace('/entries/0/drained/value', 'much'), 'spec/wrong-type', '/entries/0/drained/value'),
  one(RECORD, replace('/entries/0/drained/unit', 'litre'), 'spec/not-in-list', '/entries/0/drained/unit'),
  one(RECORD, replace('/entries/0/drained', 3), 'spec/wrong-type', '/entries/0/drained'),
  one(
    RECORD,
    replace('/entries/0/tightened/0/kind', 'torque'),
    'spec/not-in-list',
    '/entries/0/tightened/0/kind',
  ),
  one(RECORD, replace('/entries/0/opened/0', 'drain plug'), 'spec/bad-pointer', '/entries/0/opened/0'),
  one(RECORD, remove('/readings'), 'spec/missing-key', ''),
  one(RECORD, replace('/readings/hours/value', -0.1), 'spec/number-too-small', '/readings/hours/value'),
  one(
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
