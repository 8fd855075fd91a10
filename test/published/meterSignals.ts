import { published } from '../support/published.js'

/**
 * Meter signals on a machine's network: the resolution, and the largest valid count of four bytes, 4,211,081,215
 * (0xFAFFFFFF), times it.
 */
export const SIGNAL_MAXIMA = published(
  {
    room: 'interval',
    source: 'SAE J1939-71, signals of hours and distance; ISO 11783-7, wheel-based machine distance',
    edition: 'not named',
    place: 'SPN 244, 245, 247, 917 in several public decoders; the public data dictionary of ISO 11783',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'the resolutions were read, and that the distance starts again past 4,211,081.215 m; the other maxima follow',
  },
  [
    { signal: 'engine total hours', spn: 247, resolution: '0.05 h', largest: 210_554_060.75, unit: 'h' },
    { signal: 'trip distance', spn: 244, resolution: '0.125 km', largest: 526_385_151.875, unit: 'km' },
    {
      signal: 'total vehicle distance',
      spn: 245,
      resolution: '0.125 km',
      largest: 526_385_151.875,
      unit: 'km',
    },
    {
      signal: 'high resolution total vehicle distance',
      spn: 917,
      resolution: '5 m',
      largest: 21_055_406.075,
      unit: 'km',
    },
    { signal: 'wheel-based machine distance', resolution: '1 mm', largest: 4211.081_215, unit: 'km' },
  ],
)
