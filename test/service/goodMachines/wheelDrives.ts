import { goodMachine } from './goodMachine.js'
import { at, change, drive, gearOil, makerFluid, plug, torque, value, viscosity, washer } from './notation.js'

/** Final drives of a tracked dumper: two plugs in each cover, the lower one drains; it moves on its tracks. */
export const trackedDumper = goodMachine({
  machine: {
    make: 'Rullestad',
    model: 'T 500',
    type: 'tracked dumper',
    mass: value('560 kg', '1,235 lb'),
    secure: [
      { item: 'skip', how: 'empty it and lower it onto the frame', when: 'before work' },
      { item: 'area round the tracks', how: 'keep everyone clear', when: 'before a run' },
    ],
  },
  gearcases: {
    drive: {
      name: 'final drive',
      type: 'final drive',
      instances: { left: { name: 'left' }, right: { name: 'right' } },
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            gearOil('80W-90', 'GL-4'),
            { kind: 'grade', grade: 'VG 220', system: 'ISO VG', limitedSlip: 'not stated' },
          ],
        },
        fill: {
          drainAndRefill: value('0.6 L', '0.63 qt (US)'),
          per: 'instance',
          method: { kind: 'to level hole', opening: 'level' },
          level: { attitude: 'not stated', engine: 'stopped', recheckAfterRun: false },
        },
      },
      openings: {
        level: plug('fill and level plug', 'fill mark down, level mark down', 'G 3/8', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('not stated', '50 N·m', '37 lbf·ft', '5.1 kgf·m'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              designation: 'P14',
              replace: 'every opening',
              partNumber: 'RS-P14',
            },
          ],
          place: at('cover of the final drive, level with its centre when the other plug is at the bottom'),
        }),
        drain: plug('drain plug', 'drain mark down', 'G 3/8', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('not stated', '50 N·m', '37 lbf·ft', '5.1 kgf·m'),
          seals: [
            {
              kind: 'o-ring',
              material: 'NBR',
              designation: 'P14',
              replace: 'every opening',
              partNumber: 'RS-P14',
            },
          ],
          place: at('cover of the final drive, marked DRAIN'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
    },
  },
  services: { 'final-drive-oil': change('final drive oil change', ['drive'], '500') },
  oil: [
    [
      'gear oil 80W-90',
      { grade: '80W-90', system: 'SAE J306', categories: ['GL-4'], ...viscosity(140, 14.5) },
      '1 L',
      2,
    ],
  ],
})

/** Wheel motors with a gear and a wet brake: a hand pump releases the brake so that the wheel can be turned. */
export const wheelMotor = goodMachine({
  machine: {
    make: 'Solheim',
    model: 'HX 25',
    type: 'hydrostatic tool carrier',
    mass: value('1,450 kg', '3,197 lb'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    supports: {
      rear: {
        at: 'under the rear cross member, both ends',
        jack: 'middle of the rear cross member',
        axle: 'rear',
      },
    },
    secure: [
      { item: 'tool frame', how: 'lower it to the ground', when: 'before work' },
      {
        item: 'rear brakes',
        how: 'let the pressure off port BR',
        when: 'before a run',
      },
    ],
  },
  gearcases: {
    'wheel-gear': {
      name: 'wheel motor gear and brake',
      type: 'hub reduction',
      axle: 'rear',
      instances: { left: { name: 'left' }, right: { name: 'right' } },
      access: { kind: 'raised', supports: ['rear'] },
      oilSpace: {
        kind: 'own',
        oils: {
          kind: 'oils',
          choices: [
            makerFluid('Solheim Wet Brake 10W-30'),
            {
              kind: 'grade',
              grade: '10W-30',
              system: 'SAE J300',
              category: 'GL-4',
              limitedSlip: 'not stated',
            },
          ],
        },
        fill: {
          drainAndRefill: value('0.9 L', '0.24 gal (US)'),
          per: 'instance',
          method: { kind: 'to level hole', opening: 'upper' },
          level: { attitude: 'level on stands', engine: 'stopped', recheckAfterRun: true },
        },
      },
      openings: {
        upper: plug('fill and level plug', 'fill mark level, level mark level', 'M18x1,5', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('oiled', '40 ± 4 N·m', '30 ± 3 lbf·ft'),
          seals: [washer('SH 1822', 'aluminium', '18 x 22 x 1.5')],
          place: at('face of the hub'),
        }),
        lower: plug('drain plug', 'drain mark level', 'M18x1,5', {
          drive: drive('internal hex', '8 mm'),
          tightening: torque('oiled', '40 ± 4 N·m', '30 ± 3 lbf·ft'),
          seals: [washer('SH 1822', 'aluminium', '18 x 22 x 1.5')],
          magnet: true,
          place: at('rim of the hub'),
        }),
      },
      emptying: [{ kind: 'drain plug', opening: 'lower' }],
      yellowMetal: 'yes',
    },
  },
  services: {
    'wheel-gear-oil': change('wheel gear oil change', ['wheel-gear'], '500', {
      notes: {
        'turn-the-wheel':
          'The arrow on the hub is the mark. Hold the brakes off: hand pump at port BR, 25 to 30 bar.',
      },
    }),
  },
  oil: [
    ['wet brake oil 10W-30', { makerFluids: ['Solheim Wet Brake 10W-30'], ...viscosity(62, 9.6) }, '5 L', 1],
  ],
})
