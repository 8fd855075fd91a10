/**
 * Codes that were renamed, with what each is called today. A sheet's waiver of a retired code waives today's, so that a
 * sheet stays valid; no code here is ever used again for something else.
 */
export const RETIRED_CODES: Readonly<Record<string, string>> = {
  'interval/factor-leaves-part': 'interval/fractional-period',
  'seal/size-is-nothing': 'seal/zero-size',
  'toolbox/accuracy-not-believed': 'toolbox/implausible-accuracy',
}
