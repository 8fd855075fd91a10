import { published } from '../support/published.js'

/** Thread, N·m in steel or grey cast iron, in aluminium. */
export const MTN_5183_1: readonly (readonly [string, string, string])[] = published(
  {
    room: 'thread',
    source: 'an engine maker’s works standard MTN 5183-1, plug torques',
    edition: 'not named',
    place: 'table; plugs DIN 908, 910, 7604 with a DIN 7603 copper ring',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'for threads and faces oiled: a dry plug is compared with it too, only to find slips of units; the copy has no table lines, so the columns follow the order of the headings',
    values: () => 2,
  },
  [
    ['M10x1', '15', '15'],
    ['M12x1.5', '35', '25'],
    ['M14x1.5', '35', '25'],
    ['M16x1.5', '40', '30'],
    ['M18x1.5', '50', '35'],
    ['M20x1.5', '55', '45'],
    ['M22x1.5', '60', '50'],
    ['M24x1.5', '70', '60'],
    ['M26x1.5', '80', '70'],
    ['M27x2', '80', '70'],
    ['M30x1.5', '100', '90'],
    ['M30x2', '95', '85'],
    ['M33x2', '120', '110'],
    ['M36x1.5', '130', '115'],
    ['M38x1.5', '140', '120'],
    ['M42x1.5', '150', '130'],
    ['M45x1.5', '160', '140'],
    ['M48x1.5', '170', '145'],
    ['M52x1.5', '180', '150'],
    ['M56x2', '190', '160'],
    ['M64x2', '205', '175'],
  ],
)

/** Another type of seal; aluminium with a plus tolerance. */
export const MTN_5183_6: readonly (readonly [string, string, string])[] = published(
  {
    room: 'thread',
    source: 'an engine maker’s works standard MTN 5183-6, plug torques',
    edition: 'not named',
    place: 'table; screw plugs with another type of seal',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'aluminium with a plus tolerance; whether the threads are oiled was not read',
    values: (row) => row.filter((cell) => /^\d/.test(cell)).length,
  },
  [
    ['M10x1', '20', '10+2'],
    ['M12x1.5', '35', '14+2'],
    ['M14x1.5', '45', '15+3'],
    ['M16x1.5', '55', '18+3'],
    ['M18x1.5', '70', '23+3'],
    ['M22x1.5', '100', '33+4'],
    ['M27x2', '170', '57+5'],
    ['M33x2', '310', '103+10'],
    ['M42x2', '330', '110+11'],
    ['M48x2', '420', '140+14'],
    ['M60x2', '-', '200+20'],
  ],
)
