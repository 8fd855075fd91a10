/**
 * Coarse pitch in mm by nominal diameter in mm. ISO 261 from memory; M6 to M24 agree with the stress areas of
 * ISO 898-1 (see the tests).
 */
export const COARSE_PITCHES: Readonly<Record<string, number>> = {
  '3': 0.5,
  '4': 0.7,
  '5': 0.8,
  '6': 1,
  '7': 1,
  '8': 1.25,
  '10': 1.5,
  '12': 1.75,
  '14': 2,
  '16': 2,
  '18': 2.5,
  '20': 2.5,
  '22': 2.5,
  '24': 3,
  '27': 3,
  '30': 3.5,
  '33': 3.5,
  '36': 4,
  '39': 4,
  '42': 4.5,
  '45': 4.5,
  '48': 5,
  '52': 5,
  '56': 5.5,
  '60': 5.5,
  '64': 6,
}

/** Fine pitches in mm of plugs and bolts in these sizes; ISO 261 from memory. */
export const FINE_PITCHES: readonly number[] = [0.35, 0.5, 0.75, 1, 1.25, 1.5, 2, 3, 4]
