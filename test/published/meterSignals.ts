/**
 * Meter signals on a machine's network. Resolutions and ranges as in several public SAE J1939-71 decoders (mark R),
 * maxima calculated exactly from them (mark C); wheel-based distance and its restart at zero from ISO 11783-7's public
 * data dictionary (mark R). Raw count 4,211,081,215 is the largest valid one (0xFAFFFFFF).
 */
export const SIGNAL_MAXIMA = [
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
] as const
