import { published } from '../support/published.js'

/** Thread, inside × outside × thickness in mm. */
export const DIN_7603 = published(
  {
    room: 'seal',
    source: 'DIN 7603, flat sealing rings',
    edition: '2001-05',
    place: 'sizes in public code tables',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'M14 in three sources, the others in one; the table of the standard itself was not read',
    values: () => 3,
  },
  [
    ['M14x1.5', '14', '18', '1.5'],
    ['M14x1.5', '14', '20', '1.5'],
    ['M16x1.5', '16', '20', '1.5'],
    ['M18x1.5', '18', '22', '1.5'],
    ['M20x1.5', '20', '24', '1.5'],
    ['M24x2', '24', '30', '2'],
    ['M30x2', '30', '36', '2'],
  ],
)

/** Dash number, inside and section in the chart's own millimetres. */
export const AS568 = published(
  {
    room: 'seal',
    source: 'AS568, o-ring sizes',
    edition: 'not named',
    place: 'rows 0xx, 1xx and 2xx of a public chart',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'rows that contradict other charts (-200, 3xx) are left out',
    values: () => 2,
  },
  [
    ['001', '0.74', '1.02'],
    ['004', '1.78', '1.78'],
    ['008', '4.47', '1.78'],
    ['010', '6.07', '1.78'],
    ['012', '9.25', '1.78'],
    ['014', '12.42', '1.78'],
    ['016', '15.60', '1.78'],
    ['020', '21.95', '1.78'],
    ['024', '28.30', '1.78'],
    ['030', '41.00', '1.78'],
    ['110', '9.19', '2.62'],
    ['120', '25.07', '2.62'],
    ['210', '18.64', '3.53'],
    ['214', '24.99', '3.53'],
    ['218', '31.34', '3.53'],
    ['222', '37.69', '3.53'],
    ['226', '50.39', '3.53'],
    ['230', '63.09', '3.53'],
  ],
)

/** Oil and grease rating, °C from and to, special compounds from and to. */
export const ELASTOMERS = published(
  {
    room: 'seal',
    source: 'a seal maker’s table of elastomers',
    edition: 'not named',
    place: 'technical support page',
    read: 'where it is quoted',
    agrees: 'exactly',
    // of a family that must never be used no limit is compared
    values: ([, rating]) => (rating === 'E' ? 1 : 5),
  },
  [
    ['NBR', 'B', -30, 100, -50, 120],
    ['HNBR', 'B', -30, 150, -40, 150],
    ['EPDM', 'E', -45, 130, -45, 130],
    ['VMQ', 'C', -55, 200, -55, 250],
    ['FVMQ', 'B', -55, 175, -55, 175],
    ['FKM', 'A', -15, 200, -35, 200],
    ['AU', 'B', -40, 100, -40, 100],
    ['CR', 'C', -40, 100, -50, 100],
    ['FFKM', 'A', -15, 260, -15, 330],
  ],
)
