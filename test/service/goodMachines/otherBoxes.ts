import { goodMachine } from './goodMachine.js'
import {
  at,
  change,
  drive,
  gearOil,
  makerFluid,
  NO_TORQUE,
  plug,
  torque,
  value,
  viscosity,
  washer,
} from './notation.js'

/** Gearbox with separate fill, level and drain plugs. */
export const levelPlugGearbox = goodMachine({
  machine: {
    make: 'Bruvoll',
    model: 'TT 9',
    type: 'four-wheel-drive slope mower',
    mass: value('310 kg'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [{ item: 'cutter bar', how: 'disengage it and fit the bar guard', when: 'before work' }],
  },
  gearcases: {
    gearbox: {
      name: 'gearbox',
      type: 'gearbox',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            { kind: 'grade', grade: 'VG 220', system: 'ISO VG', category: 'CLP', limitedSlip: 'not stated' },
          ],
        },
        fill: {
          drainAndRefill: value('2.8 L'),
          method: { kind: 'to level hole', opening: 'level' },
          level: {
            attitude: 'level on its wheels',
            engine: 'stopped',
            minutesAfterStop: value('5 min'),
            recheckAfterRun: false,
          },
        },
      },
      openings: {
        fill: plug('fill plug with breather', 'fill', 'G 3/4', {
          drive: drive('external hex', '32 mm'),
          tightening: torque('dry', '45 N·m'),
          seals: [
            {
              kind: 'bonded seal',
              material: 'NBR',
              size: { inside: '27.05', outside: '34.93', thickness: '2.5', unit: 'mm' },
              replace: 'on condition',
              partNumber: '40-3427',
            },
          ],
          place: at('gearbox lid, behind the shift lever'),
        }),
        level: plug('level plug', 'level', 'G 3/8', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('dry', '35 N·m'),
          seals: [washer('40-1721', 'copper', '17 x 21 x 1.5')],
          place: at('left side of the gearbox, marked OIL'),
        }),
        drain: plug('drain plug', 'drain', 'G 3/8', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('dry', '35 N·m'),
          seals: [washer('40-1721', 'copper', '17 x 21 x 1.5')],
          magnet: true,
          place: at('bottom of the gearbox'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
      yellowMetal: 'yes',
    },
  },
  services: { 'gearbox-oil': change('gearbox oil change', ['gearbox'], '250') },
  oil: [
    [
      'gear oil CLP 220',
      { grade: 'VG 220', system: 'ISO VG', categories: ['CLP'], ...viscosity(220, 18.8) },
      '5 L',
      1,
    ],
  ],
})

/** Chain cases of a skid-steer loader: the check plug is the only opening, so the oil is sucked out. */
export const chainCase = goodMachine({
  machine: {
    make: 'Lomvik',
    model: 'S 640',
    type: 'skid-steer loader',
    mass: value('5,820 lb', '2,640 kg'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [{ item: 'lift arms', how: 'lower them to the ground', when: 'before work' }],
  },
  gearcases: {
    chaincase: {
      name: 'chain case',
      type: 'gearbox',
      instances: { left: { name: 'left' }, right: { name: 'right' } },
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            {
              kind: 'grade',
              grade: '15W-40',
              system: 'SAE J300',
              category: 'CI-4',
              limitedSlip: 'not stated',
            },
          ],
        },
        fill: {
          drainAndRefill: value('7.9 qt (US)', '7.5 L'),
          per: 'instance',
          method: { kind: 'to level hole', opening: 'check' },
          level: { attitude: 'level on its wheels', engine: 'stopped', recheckAfterRun: false },
        },
      },
      openings: {
        check: plug('check plug', 'fill, level', '1 1/16-12 UN', {
          housing: 'steel',
          drive: drive('external hex', '1 1/4 in'),
          tightening: torque('not stated', '60 lbf·ft', '81 N·m'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              designation: '-912',
              replace: 'on condition',
              partNumber: '6-912',
            },
          ],
          place: at('front face of the chain case, inside the front wheel'),
        }),
      },
      emptying: [{ kind: 'suction', opening: 'check' }],
    },
  },
  services: { 'chaincase-oil': change('chain case oil change', ['chaincase'], '500') },
  oil: [
    [
      'diesel engine oil 15W-40',
      { grade: '15W-40', system: 'SAE J300', categories: ['CI-4', 'SL'], ...viscosity(105, 14.2) },
      '5 gal (US)',
      1,
    ],
  ],
})

/** Angle gearbox without a drain: sucked out through the fill hole, checked with its dipstick. */
export const suctionOnly = goodMachine({
  machine: {
    make: 'Tyrnes',
    model: 'B 110',
    type: 'four-wheel-drive rough-cut mower',
    mass: value('455 kg', '1,003 lb'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [
      { item: 'cutter deck', how: 'disengage the blades and pull the spark plug caps', when: 'before work' },
    ],
  },
  gearcases: {
    angle: {
      name: 'angle gearbox of the deck',
      type: 'bevel box',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [gearOil('85W-140', 'GL-5')] },
        fill: {
          drainAndRefill: value('0.95 L', '2.0 pt (US)'),
          method: { kind: 'dipstick', opening: 'dipstick', reading: 'resting' },
          level: {
            attitude: 'level on its wheels',
            engine: 'stopped',
            minutesAfterStop: value('15 min'),
            recheckAfterRun: false,
          },
        },
      },
      openings: {
        dipstick: plug('fill plug with dipstick', 'fill, level', '3/4-16 UNF', {
          drive: drive('hand'),
          tightening: NO_TORQUE,
          seals: [{ kind: 'o-ring', material: 'NBR', designation: '-908', replace: 'on condition' }],
          place: at('top of the gearbox'),
        }),
      },
      emptying: [{ kind: 'suction', opening: 'dipstick' }],
      shields: ['belt-guard'],
    },
  },
  shields: {
    'belt-guard': {
      name: 'belt guard',
      fasteners: { count: 3, thread: 'M8', drive: drive('external hex', '13 mm'), tightening: NO_TORQUE },
      place: at('over the gearbox'),
      guards: 'moving parts',
    },
  },
  services: { 'deck-gear-oil': change('deck gearbox oil change', ['angle'], '300') },
  oil: [
    [
      'gear oil 85W-140',
      { grade: '85W-140', system: 'SAE J306', categories: ['GL-5'], ...viscosity(350, 26) },
      '1 qt (US)',
      2,
    ],
  ],
})

/** Front drive behind a splash plate that push rivets and clips hold. */
export const splashPlate = goodMachine({
  machine: {
    make: 'Hegrabakk',
    model: 'Side 700',
    type: 'side-by-side utility machine',
    mass: value('1,310 lb', '594 kg'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    supports: { front: { at: 'under the lower frame tubes, behind the front wheels', axle: 'front' } },
  },
  gearcases: {
    front: {
      name: 'front drive',
      type: 'differential',
      axle: 'front',
      access: { kind: 'raised', supports: ['front'] },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [makerFluid('Hegrabakk Front Drive Fluid')] },
        fill: {
          drainAndRefill: value('9.0 fl oz (US)', '265 mL'),
          method: { kind: 'by quantity', opening: 'fill' },
        },
      },
      openings: {
        fill: plug('fill plug', 'fill', '3/4-16 UNF', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('not stated', '8–10 lbf·ft', '11–14 N·m'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              designation: '-908',
              replace: 'on condition',
              partNumber: 'HB 54110',
            },
          ],
          place: at('right side of the housing, seen from the wheel arch'),
        }),
        drain: plug('drain plug', 'drain', 'M10x1', {
          drive: drive('six-lobe', 'T30'),
          tightening: torque('not stated', '11 lbf·ft', '15 N·m'),
          seals: [washer('HB 54022', 'aluminium', '10 x 16 x 1.5')],
          magnet: true,
          place: at('bottom of the housing, through the hole in the skid plate'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
      breather: { place: at('hose end beside the radiator cap') },
      shields: ['splash-plate', 'trim'],
    },
  },
  shields: {
    'splash-plate': {
      name: 'splash plate',
      fasteners: { count: 6, drive: drive('clip'), tightening: NO_TORQUE },
      place: at('right front wheel arch; six push rivets'),
      guards: 'not stated',
    },
    trim: {
      name: 'lower trim',
      fasteners: { count: 2, drive: drive('clip'), tightening: NO_TORQUE },
      place: at('under the front bumper; two clips'),
    },
  },
  services: {
    'front-drive-fluid': change('front drive fluid change', ['front'], '100', { events: ['submersion'] }),
  },
  oil: [
    [
      'front drive fluid',
      { makerFluids: ['Hegrabakk Front Drive Fluid'], ...viscosity(35, 7.2) },
      '12 fl oz (US)',
      1,
    ],
  ],
})

/** Bevel box of a walk-behind cutter, packed with semi-fluid grease by quantity. */
export const greaseBevelBox = goodMachine({
  machine: {
    make: 'Lisberg',
    model: 'K 7',
    type: 'all-wheel-drive walk-behind cutter',
    mass: value('128 kg'),
    axles: { drive: { name: 'drive axle', wheels: 2 } },
    secure: [{ item: 'spark plug cap', how: 'pull it off', when: 'before work' }],
  },
  gearcases: {
    bevel: {
      name: 'bevel box',
      type: 'bevel box',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [makerFluid('semi-fluid gear grease NLGI 00, EP')] },
        fill: { drainAndRefill: value('320 cm³'), method: { kind: 'by quantity', opening: 'fill' } },
      },
      openings: {
        fill: plug('filler screw', 'fill', 'M16x1.5', {
          housing: 'aluminium',
          drive: drive('internal hex', '8 mm'),
          tightening: torque('dry', '25 N·m'),
          seals: [washer('K7-1620', 'copper', '16 x 20 x 1.5')],
          place: at('top of the bevel box'),
        }),
      },
      covers: {
        lid: {
          name: 'cover',
          bolts: {
            count: 6,
            thread: 'M6',
            propertyClass: '8.8',
            drive: drive('internal hex', '5 mm'),
            tightening: torque('dry', '9 N·m'),
            pattern: 'crosswise',
          },
          seal: { kind: 'gasket', material: 'paper', replace: 'every opening', partNumber: 'K7-0031' },
          place: at('right side of the bevel box'),
          position: 'upright',
        },
      },
      emptying: [{ kind: 'cover', cover: 'lid' }],
    },
  },
  services: { 'bevel-grease': change('bevel box grease change', ['bevel'], '400') },
  oil: [['gear grease 00, tube', { makerFluids: ['semi-fluid gear grease NLGI 00, EP'] }, '500 mL', 1]],
})
