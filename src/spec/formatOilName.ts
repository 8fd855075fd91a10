import type { OilChoice } from './leaf.js'

/** The trade's name for an oil in a sheet: `SAE 80W-90, API GL-5`, `ISO VG 220`, or the maker's name for it. */
export function formatOilName(choice: OilChoice): string {
  if (choice.kind === 'maker fluid') return choice.name
  const { grade, system, category } = choice
  const full = system === 'ISO VG' ? `ISO ${/^VG/i.test(grade) ? '' : 'VG '}${grade}` : `SAE ${grade}`
  const name = /^(SAE|ISO)\b/i.test(grade) ? grade : full
  if (category === undefined) return name
  return `${name}, ${API_CATEGORY.test(category) ? 'API ' : ''}${category}`
}

/** Gear oils: GL-1 to GL-6 and MT-1. Engine oils: SA to SQ, and CA to CK with or without `-2` or `-4`. */
const API_CATEGORY = /^(GL-[1-6]|MT-1|S[A-Q]|C[A-K](-[24])?)(\b|$)/
