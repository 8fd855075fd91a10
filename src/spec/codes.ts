/** Every code of this room with the type of its params; the texts stand in `message/<language>/spec`. */
export interface SpecCodes {
  // Which variant
  'spec/variant-stated': { variant: string }
  'spec/variant-selected': { variant: string }
  'spec/variant-only': { variant: string }
  'spec/variant-open': { candidates: readonly string[] }
  'spec/variant-not-on-sheet': { variant: string; known: readonly string[] }
  'spec/variant-contradicted': { variant: string; candidates: readonly string[] }
  'spec/variant-none-fits': { known: readonly string[] }
  'spec/variant-without-condition': { variant: string }
  // Whether a condition holds
  'spec/fact-missing': { fact: string }
  'spec/variant-listed': { variants: readonly string[]; listed: readonly string[] }
  'spec/variant-not-listed': { variants: readonly string[]; listed: readonly string[] }
  'spec/model-year-inside': { modelYear: number; from?: number; to?: number }
  'spec/model-year-outside': { modelYear: number; from?: number; to?: number }
  'spec/serial-inside': { serial: string; prefix: string; from?: string; to?: string }
  'spec/serial-outside': { serial: string; prefix: string; from?: string; to?: string }
  'spec/serial-unlike-range': { serial: string; prefix: string; width?: number }
  'spec/serial-range-unreadable': { prefix: string; from?: string; to?: string }
  'spec/market-listed': { market: string; listed: readonly string[] }
  'spec/market-not-listed': { market: string; listed: readonly string[] }
  'spec/market-in-other-case': { market: string; listed: readonly string[] }
  // Which leaf
  'spec/part-on-every-machine': { path: string }
  'spec/part-on-some-machines': { path: string }
  'spec/leaf-from-sheet': { path: string }
  'spec/leaf-absent': { path: string }
  'spec/override-applies': { path: string }
  'spec/override-may-apply': { path: string }
  'spec/override-does-not-fit': { path: string }
  'spec/overrides-overlap': { path: string; overrides: readonly string[] }
  'spec/candidates-agree': { path: string; candidates: readonly string[] }
}
