import { goodMachine } from './goodMachine.js'
import {
  at,
  change,
  drive,
  gearOil,
  makerFluid,
  plug,
  torque,
  turns,
  value,
  viscosity,
  washer,
} from './notation.js'

/** Front axle of a tractor: one oil space with a drain at each end, filled in the middle. */
export const tractorAxle = goodMachine({
  machine: {
    make: 'Fennmark',
    model: 'Tun 48',
    type: 'compact tractor',
    mass: value('1,980 kg', '4,365 lb'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [
      {
        item: 'front loader',
        how: 'lower it to the ground and take the pressure off its lines',
        when: 'before work',
      },
      { item: 'PTO', how: 'switch it off', when: 'before a run' },
    ],
  },
  gearcases: {
    axle: {
      name: 'front axle',
      type: 'differential',
      axle: 'front',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [makerFluid('Fennmark UTF'), gearOil('80W-90', 'GL-4')] },
        fill: {
          drainAndRefill: value('6.0 L', '6.3 qt (US)'),
          method: { kind: 'to level hole', opening: 'check' },
          level: {
            attitude: 'level on its wheels',
            engine: 'stopped',
            minutesAfterStop: value('10 min'),
            recheckAfterRun: true,
          },
        },
      },
      openings: {
        fill: plug('fill plug', 'fill', 'G 1/2', {
          drive: drive('external hex', '27 mm'),
          tightening: torque('not stated', '50–60 N·m', '37–44 lbf·ft'),
          seals: [{ kind: 'bonded seal', material: 'NBR', replace: 'on condition', partNumber: 'FM 2128' }],
          place: at('top of the axle housing, right of the pivot pin'),
        }),
        check: plug('oil check plug', 'level', 'G 1/4', {
          drive: drive('external hex', '19 mm'),
          tightening: torque('not stated', '30–35 N·m', '22–26 lbf·ft'),
          seals: [{ kind: 'bonded seal', material: 'NBR', replace: 'on condition', partNumber: 'FM 1320' }],
          place: at('front of the left gear case'),
        }),
        'drain-left': plug('left drain plug', 'drain', 'G 1/2', {
          drive: drive('external hex', '27 mm'),
          tightening: torque('not stated', '50–60 N·m', '37–44 lbf·ft'),
          seals: [washer('FM 2126', 'copper', '21 x 26 x 1.5')],
          place: at('underside of the left gear case'),
        }),
        'drain-right': plug('right drain plug', 'drain', 'G 1/2', {
          drive: drive('external hex', '27 mm'),
          tightening: torque('not stated', '50–60 N·m', '37–44 lbf·ft'),
          seals: [washer('FM 2126', 'copper', '21 x 26 x 1.5')],
          place: at('underside of the right gear case'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain-left', also: ['drain-right'] }],
      breather: { place: at('hose on the pivot bracket') },
    },
  },
  services: { 'front-axle-oil': change('front axle oil change', ['axle'], '600') },
  oil: [['universal tractor fluid', { makerFluids: ['Fennmark UTF'], ...viscosity(60, 9.4) }, '20 L', 1]],
})

/** Rear axle of an articulated loader: a differential and two wheel ends, each with one plug and a mark on the hub. */
export const loaderAxle = goodMachine({
  machine: {
    make: 'Granvik',
    model: 'L 35',
    type: 'articulated wheel loader',
    mass: value('4,350 kg', '9,590 lb'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [
      { item: 'bucket', how: 'lower it flat to the ground', when: 'before work' },
      { item: 'articulation', how: 'fit the lock bar', when: 'before work' },
    ],
  },
  gearcases: {
    differential: {
      name: 'rear differential',
      type: 'differential',
      axle: 'rear',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [gearOil('85W-90', 'GL-5', { limitedSlip: 'required' })] },
        fill: {
          drainAndRefill: value('4.5 L', '1.2 gal (US)'),
          method: { kind: 'to level hole', opening: 'level' },
          level: { attitude: 'level on its wheels', engine: 'stopped', recheckAfterRun: false },
        },
      },
      openings: {
        level: plug('fill and level plug', 'fill, level', 'M24x1.5', {
          drive: drive('internal hex', '12 mm'),
          tightening: torque('dry', '80 ± 8 N·m', '59 ± 6 lbf·ft'),
          seals: [washer('GV-2430', 'copper', '24 x 30 x 2')],
          place: at('rear face of the axle housing'),
        }),
        drain: plug('drain plug', 'drain', 'M24x1.5', {
          drive: drive('internal hex', '12 mm'),
          tightening: torque('dry', '80 ± 8 N·m', '59 ± 6 lbf·ft'),
          seals: [washer('GV-2430', 'copper', '24 x 30 x 2')],
          magnet: true,
          place: at('underside of the axle housing'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
      breather: { place: at('top of the axle tube, left') },
      drainTemperature: value('40–60 °C'),
    },
    'wheel-end': {
      name: 'wheel end',
      type: 'hub reduction',
      axle: 'rear',
      instances: { left: { name: 'left' }, right: { name: 'right' } },
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [gearOil('85W-90', 'GL-5', { limitedSlip: 'either' })] },
        fill: {
          drainAndRefill: value('0.75 L', '0.8 qt (US)'),
          per: 'instance',
          method: { kind: 'to level hole', opening: 'plug' },
          level: { attitude: 'level on its wheels', engine: 'stopped', recheckAfterRun: false },
        },
      },
      openings: {
        plug: plug('hub plug', 'drain mark down, fill mark level, level mark level', 'M22x1.5', {
          drive: drive('internal hex', '10 mm'),
          tightening: torque('dry', '60 N·m', '44 lbf·ft'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              size: { inside: '19.3', section: '2.4', unit: 'mm' },
              replace: 'every opening',
              partNumber: 'GV-0193',
            },
          ],
          place: at('face of the hub; the line OIL LEVEL beside it is the mark'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'plug' }],
    },
  },
  services: {
    'axle-oil': change('rear axle oil change', ['differential', 'wheel-end'], '500', {
      notes: {
        'roll-the-machine':
          'Lift the bucket clear of the ground first. The lock bar stays in: drive straight.',
      },
    }),
  },
  oil: [
    [
      'axle oil 85W-90 LS',
      {
        grade: '85W-90',
        system: 'SAE J306',
        categories: ['GL-5'],
        limitedSlip: 'contains additive',
        ...viscosity(180, 17),
      },
      '5 L',
      2,
    ],
  ],
})

/** Rear transaxle of a cart: taper plugs, capacity in cubic centimetres. */
export const cartTransaxle = goodMachine({
  machine: {
    make: 'Myrland',
    model: 'Vogn 2',
    type: 'utility cart',
    mass: value('430 lb', '195 kg'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    supports: {
      'rear-frame': {
        at: 'under both frame rails, ahead of the rear springs',
        jack: 'centre of the rear axle tube',
        axle: 'rear',
      },
    },
  },
  gearcases: {
    transaxle: {
      name: 'transaxle',
      type: 'gearbox',
      axle: 'rear',
      access: { kind: 'raised', supports: ['rear-frame'] },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            { kind: 'grade', grade: '30', system: 'SAE J300', category: 'SG', limitedSlip: 'not stated' },
            gearOil('80W', 'GL-3'),
          ],
        },
        fill: {
          drainAndRefill: value('410 cc', '14 fl oz (US)'),
          dryFill: value('560 cc', '19 fl oz (US)'),
          method: { kind: 'by quantity', opening: 'fill' },
        },
      },
      openings: {
        fill: plug('fill plug', 'fill', '3/8-18 NPT', {
          housing: 'aluminium',
          drive: drive('external square', '7/16 in'),
          tightening: turns('2', '3'),
          seals: [{ kind: 'thread sealant', product: 'PTFE pipe sealant', replace: 'every opening' }],
          place: at('right side of the housing, above the input shaft'),
        }),
        drain: plug('drain plug', 'drain', '3/8-18 NPT', {
          housing: 'aluminium',
          drive: drive('external square', '7/16 in'),
          tightening: turns('2', '3'),
          seals: [{ kind: 'thread sealant', product: 'PTFE pipe sealant', replace: 'every opening' }],
          place: at('bottom of the housing'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
    },
  },
  services: {
    'transaxle-oil': change('transaxle oil change', ['transaxle'], '500', { events: ['submersion'] }),
  },
  oil: [
    [
      'gear oil 80W-90',
      { grade: '80W-90', system: 'SAE J306', categories: ['GL-4'], ...viscosity(140, 14.5) },
      '1 L',
      2,
    ],
    [
      'motor oil 30',
      { grade: '30', system: 'SAE J300', categories: ['SG', 'CD'], ...viscosity(95, 11) },
      '1 qt (US)',
      2,
    ],
  ],
})

/** Rear final drive of a quad: a small capacity in cubic centimetres, torques in pound-inches and pound-feet. */
export const shaftQuad = goodMachine({
  machine: {
    make: 'Skarvnes',
    model: '420 S',
    type: 'shaft-drive quad',
    mass: value('601 lb', '273 kg'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
  },
  gearcases: {
    rear: {
      name: 'rear final gear case',
      type: 'final drive',
      axle: 'rear',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            gearOil('80W-90', 'GL-5', { ambient: value('≥ 14 °F', '≥ -10 °C') }),
            gearOil('75W-90', 'GL-5'),
          ],
        },
        fill: {
          drainAndRefill: value('90 cc', '3.0 fl oz (US)'),
          dryFill: value('100 cc', '3.4 fl oz (US)'),
          method: { kind: 'to level hole', opening: 'check' },
          level: { attitude: 'level on its wheels', engine: 'stopped', recheckAfterRun: false },
        },
      },
      openings: {
        cap: plug('oil filler cap', 'fill', 'M30x1.5', {
          housing: 'aluminium',
          drive: drive('external hex', '17 mm'),
          tightening: torque('not stated', '12 N·m', '106 lbf·in'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              size: { inside: '27.4', section: '2.4', unit: 'mm' },
              replace: 'on condition',
              partNumber: '91307-S42',
            },
          ],
          place: at('top of the final gear case, left'),
        }),
        check: plug('oil check bolt', 'level', 'M8x1.25', {
          housing: 'aluminium',
          drive: drive('external hex', '10 mm'),
          tightening: torque('not stated', '10 N·m', '89 lbf·in'),
          seals: [washer('90463-S08', 'aluminium', '8 x 14 x 1')],
          place: at('rear of the final gear case'),
        }),
        drain: plug('drain bolt', 'drain', 'M12x1.5', {
          housing: 'aluminium',
          drive: drive('external hex', '14 mm'),
          tightening: torque('not stated', '20 N·m', '15 lbf·ft'),
          seals: [washer('90471-S12', 'aluminium', '12 x 20 x 2')],
          place: at('underside of the final gear case'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
      breather: { place: at('hose end under the seat') },
      shields: ['skid-plate'],
    },
  },
  shields: {
    'skid-plate': {
      name: 'rear skid plate',
      fasteners: {
        count: 4,
        thread: 'M6',
        drive: drive('external hex', '10 mm'),
        tightening: torque('not stated', '62 lbf·in', '7 N·m'),
      },
      place: at('under the final gear case'),
      guards: 'the underside',
    },
  },
  services: {
    'rear-gear-oil': change('rear final gear oil change', ['rear'], '200', { events: ['submersion'] }),
  },
  oil: [
    [
      'hypoid 80W-90',
      { grade: '80W-90', system: 'SAE J306', categories: ['GL-4', 'GL-5'], ...viscosity(140, 14.5) },
      '8 fl oz (US)',
      2,
    ],
  ],
})
