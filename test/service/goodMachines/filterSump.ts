import { goodMachine } from './goodMachine.js'
import { at, change, drive, makerFluid, plug, torque, value, viscosity } from './notation.js'

/** Transmission and hydraulics of a compact tractor in one sump: spin-on filter, suction strainer under a cover. */
export const filterSump = goodMachine({
  machine: {
    make: 'Tverrelv',
    model: 'Lem 27',
    type: 'compact tractor with loader',
    mass: value('1290 kg', '2844 lb'),
    axles: { front: { name: 'front axle', wheels: 2 }, rear: { name: 'rear axle', wheels: 2 } },
    secure: [{ item: 'loader', how: 'lower it and move its lever with the engine off', when: 'before work' }],
  },
  gearcases: {
    sump: {
      name: 'transmission case',
      type: 'gearbox',
      access: { kind: 'from the ground' },
      oilSpace: {
        kind: 'own',
        oils: { kind: 'oils', choices: [makerFluid('Tverrelv UTF 3')] },
        fill: {
          drainAndRefill: value('13.5 L', '3.6 US gal'),
          method: { kind: 'dipstick', opening: 'dipstick', reading: 'resting' },
          level: {
            attitude: 'level on its wheels',
            engine: 'stopped',
            minutesAfterStop: value('5 min'),
            recheckAfterRun: true,
          },
        },
      },
      openings: {
        fill: plug('fill plug', 'fill', '1 5/16-12 UNF', {
          drive: drive('hand'),
          tightening: { kind: 'not stated', threadCondition: 'not stated' },
          seals: [{ kind: 'o-ring', material: 'NBR', replace: 'on condition', partNumber: 'TL-216' }],
          place: at('behind the seat, left'),
        }),
        dipstick: plug('dipstick', 'level', '', {
          drive: drive('hand'),
          tightening: { kind: 'not stated', threadCondition: 'not stated' },
          seals: [{ kind: 'o-ring', material: 'NBR', replace: 'on condition', partNumber: 'TL-117' }],
          place: at('behind the seat, right'),
        }),
        drain: plug('drain plug', 'drain', '3/4-16 UNF', {
          drive: drive('external hex', '22 mm'),
          tightening: torque('dry', '54 ± 6 N·m', '40 ± 4 lbf·ft'),
          seals: [{ kind: 'o-ring', material: 'NBR', replace: 'every opening', partNumber: 'TL-908' }],
          magnet: true,
          place: at('under the case, in the middle'),
        }),
      },
      covers: {
        strainer: {
          name: 'strainer cover',
          bolts: {
            count: 3,
            thread: 'M8',
            propertyClass: '8.8',
            drive: drive('external hex', '13 mm'),
            tightening: torque('dry', '20–25 N·m', '15–18 lbf·ft'),
            pattern: 'in turn',
          },
          seal: { kind: 'gasket', material: 'paper', replace: 'every opening', partNumber: 'TL-5531' },
          position: 'upright',
          place: at('right side of the case, ahead of the rear wheel'),
        },
      },
      filters: {
        return: {
          name: 'hydraulic filter',
          kind: 'spin-on filter',
          held: {
            kind: 'screwed',
            thread: '1-12 UNF',
            drive: drive('hand'),
            tightening: { kind: 'turns', min: '0.75', max: '1', threadCondition: 'oiled' },
          },
          seals: [],
          partNumber: 'TL-8810',
          change: 'every change',
          place: at('left side of the case, below the step'),
        },
        suction: {
          name: 'suction strainer',
          kind: 'strainer',
          held: { kind: 'behind cover', cover: 'strainer' },
          seals: [{ kind: 'o-ring', material: 'NBR', replace: 'on condition', partNumber: 'TL-240' }],
          change: 'clean every change',
          place: at('in the case, behind its cover'),
        },
      },
      emptying: [{ kind: 'drain plug', opening: 'drain' }],
    },
  },
  services: {
    change: change('transmission fluid and filter change', ['sump'], '400', {
      intervals: {
        first: { kind: 'interval', hours: '50' },
        repeat: { kind: 'interval', hours: '400' },
        countFrom: 'completion',
      },
    }),
  },
  oil: [['20 litre can of UTF 3', { makerFluids: ['Tverrelv UTF 3'], ...viscosity(58, 9.2) }, '20 L', 2]],
})
