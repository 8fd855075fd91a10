/**
 * Renamed codes and their new names. A waiver of a retired code waives the new one, so that its sheet stays
 * valid. A retired code is never used again.
 */
export const RETIRED_CODES: Readonly<Record<string, string>> = {
  'fill/drained-less': 'record/drained-far-below-refill',
  'interval/factor-leaves-part': 'interval/fractional-period',
  'record/reading-against-log': 'record/reading-contradicts-log',
  'record/refill-not-noted': 'record/refill-not-recorded',
  'record/tightened-other-way': 'record/tightening-method-differs',
  'seal/crush-washer-kept': 'seal/crush-washer-reused',
  'seal/size-is-nothing': 'seal/zero-size',
  'spec/opening-lacks-role': 'spec/opening-without-role',
  'thread/designation-not-read': 'thread/designation-unreadable',
  'toolbox/accuracy-not-believed': 'toolbox/implausible-accuracy',
  'torque/set-outside': 'record/torque-outside-band',
}
