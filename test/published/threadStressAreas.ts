import { published } from '../support/published.js'

/** mm² as printed. */
export const STRESS_AREAS = published(
  {
    room: 'thread',
    source: 'ISO 898-1, stress areas',
    edition: '1999',
    place: 'table for coarse threads, on a fastener distributor’s page',
    read: 'where it is quoted',
    agrees: 'to the printed digits',
  },
  [
    { thread: 'M6', printed: '20.1' },
    { thread: 'M8', printed: '36.6' },
    { thread: 'M10', printed: '58.0' },
    { thread: 'M12', printed: '84.3' },
    { thread: 'M14', printed: '115' },
    { thread: 'M16', printed: '157' },
    { thread: 'M18', printed: '192' },
    { thread: 'M20', printed: '245' },
    { thread: 'M22', printed: '303' },
    { thread: 'M24', printed: '353' },
  ],
)

/** Fine threads, pi/4 ((d2 + d3)/2)^2, d2 = d - 0.649519 P, d3 = d1 - H/6. */
export const WORKED_FINE = published(
  {
    room: 'thread',
    source: 'ISO 898-1, equation of the stress area',
    edition: '1999',
    place: 'calculated by hand',
    read: 'calculated',
    agrees: 'to the digits shown',
    values: () => 2,
  },
  [
    { thread: 'M8x1', area: '39.167', pitchDiameter: '7.3505' },
    { thread: 'M10x1.25', area: '61.199', pitchDiameter: '9.1881' },
    { thread: 'M12x1.5', area: '88.126', pitchDiameter: '11.0257' },
    { thread: 'M14x1.5', area: '124.546', pitchDiameter: '13.0257' },
    { thread: 'M16x1.5', area: '167.248', pitchDiameter: '15.0257' },
    { thread: 'M18x1.5', area: '216.234', pitchDiameter: '17.0257' },
    { thread: 'M20x1.5', area: '271.503', pitchDiameter: '19.0257' },
    { thread: 'M22x1.5', area: '333.056', pitchDiameter: '21.0257' },
    { thread: 'M24x2', area: '384.416', pitchDiameter: '22.7010' },
  ],
)

/** in², in the worked example of the torque of a 3/8-16 UNC bolt. */
export const IFI_AREA = published(
  {
    room: 'thread',
    source: 'IFI Technical Data N-12/N-16',
    edition: '5th',
    place: 'stress area of the worked example',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  { thread: '3/8-16 UNC', printed: '0.0775' },
)
