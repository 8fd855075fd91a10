import type { DriveKind, Socket, Toolbox, TorqueWrench } from '../../../src/v1/spec.js'

const wrench = (
  drive: string,
  unit: 'N.m' | 'lbf.ft' | 'lbf.in',
  lowest: number,
  highest: number,
  graduation: number,
): TorqueWrench => ({
  name: `${drive} click wrench, ${highest} ${unit}`,
  type: 'click',
  drive,
  scales: [{ unit, lowest, highest, graduation }],
  accuracy: { kind: 'ISO 6789' },
  calibration: { date: '2023-02-11', cyclesSince: 200 },
})

const socket = (fits: DriveKind, size: string, drive: string): [string, Socket] => [
  `${fits} ${size}`.replaceAll(/[^a-z0-9]+/gi, '-').toLowerCase(),
  { name: `${size} socket, ${fits}`, fits, size, drive },
]

const sockets = (fits: DriveKind, drive: string, ...sizes: string[]) =>
  sizes.map((size) => socket(fits, size, drive))

/** A service van with metric and inch tools for machines of this size. */
export const SERVICE_VAN: Toolbox = {
  kind: 'toolbox',
  version: '1.0',
  id: 'service-van',
  name: 'Service van',
  header: 'Invented test data.',
  wrenches: {
    'quarter-newton': wrench('1/4 in', 'N.m', 4, 25, 0.5),
    'half-newton': wrench('1/2 in', 'N.m', 20, 210, 1),
    'quarter-inch-pound': wrench('1/4 in', 'lbf.in', 30, 250, 1),
    'half-foot-pound': wrench('1/2 in', 'lbf.ft', 15, 150, 1),
  },
  adaptors: {
    'quarter-to-half': { name: '1/4 to 1/2 in adaptor', kind: 'drive adaptor', from: '1/4 in', to: '1/2 in' },
    'half-to-quarter': { name: '1/2 to 1/4 in adaptor', kind: 'drive adaptor', from: '1/2 in', to: '1/4 in' },
  },
  sockets: Object.fromEntries([
    ...sockets('external hex', '1/4 in', '8 mm', '10 mm', '13 mm'),
    ...sockets(
      'external hex',
      '1/2 in',
      '14 mm',
      '17 mm',
      '19 mm',
      '22 mm',
      '24 mm',
      '27 mm',
      '32 mm',
      '1 1/4 in',
    ),
    ...sockets('internal hex', '1/4 in', '5 mm'),
    ...sockets('internal hex', '1/2 in', '8 mm', '10 mm', '12 mm', '14 mm'),
    ...sockets('external square', '1/2 in', '7/16 in'),
    ...sockets('six-lobe', '1/4 in', 'T30'),
  ]),
  vessels: {
    jug: {
      name: '1 litre jug',
      size: { value: 1, unit: 'L' },
      graduation: { value: 10, unit: 'mL' },
      lowestMark: { value: 50, unit: 'mL' },
    },
  },
  pans: { pan: { name: '15 litre pan', size: { value: 15, unit: 'L' } } },
  fillers: {
    funnel: {
      name: 'funnel with hose',
      funnel: { shape: 'cone', diameter: { value: 160, unit: 'mm' }, depth: { value: 150, unit: 'mm' } },
      hose: {
        bore: { value: 14, unit: 'mm' },
        length: { value: 1, unit: 'm' },
        drop: { value: 0.8, unit: 'm' },
      },
    },
  },
  stands: { stands: { name: 'axle stands', count: 4, rating: { value: 3000, unit: 'kg' } } },
  jacks: { jack: { name: 'bottle jack', rating: { value: 5000, unit: 'kg' } } },
  chocks: 6,
}
