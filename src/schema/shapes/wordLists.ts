// The words that the full form and short notation share, without `not stated`.

export const THREAD_CONDITIONS = [
  'dry',
  'oiled',
  'sealant',
  'anti-seize',
  'threadlocker',
  'as supplied',
] as const
export const LIMITED_SLIP = ['required', 'not permitted', 'either'] as const
export const WASHER_FORMS = ['flat', 'folded', 'captive'] as const
export const WASHER_MATERIALS = ['copper', 'aluminium', 'soft steel', 'fibre'] as const
export const ELASTOMERS = ['NBR', 'HNBR', 'FKM', 'ACM', 'EPDM', 'VMQ', 'FVMQ', 'AU', 'CR', 'FFKM'] as const
export const REPLACEMENTS = ['every opening', 'on condition'] as const
export const ATTITUDES = ['level on its wheels', 'level on stands', 'not stated'] as const
export const ENGINE_STATES = ['stopped', 'running'] as const
export const DIPSTICK_READINGS = ['screwed in', 'resting'] as const
export const OPENING_ROLES = ['fill', 'drain', 'level'] as const
export const BOLT_PATTERNS = ['crosswise', 'from the middle outwards', 'in turn'] as const
export const DOCUMENT_KINDS = [
  'owner manual',
  'workshop manual',
  'service bulletin',
  'parts list',
  'plate',
  'other',
] as const
