/** The pattern of each kind of designation, after `normalizeDesignation`. */
export const THREAD_PATTERNS = {
  metric:
    /^M ?(?<size>[0-9]{1,3}(?:\.[0-9]{1,2})?)(?: ?[x×] ?(?<pitch>[0-9]{1,2}(?:\.[0-9]{1,3})?))?(?: ?- ?(?<fit>[0-9]{1,2}[A-Za-z](?:[0-9][A-Za-z])?))?$/i,
  pipe: /^(?<system>BSPP|BSPT|BSP|NPTF|NPT|PT|PF|PS|Rc|Rp|R|G) ?(?<size>[0-9]{1,2}(?:[ -][0-9]\/[0-9]{1,2}|\/[0-9]{1,2})?)(?: ?- ?(?<per>[0-9]{1,2}(?:\.5| 1\/2)?))?(?: ?[AB])?$/i,
  pipeLettersLast:
    /^(?<size>[0-9]{1,2}(?:[ -][0-9]\/[0-9]{1,2}|\/[0-9]{1,2})?)(?: ?- ?(?<per>[0-9]{1,2}(?:\.5| 1\/2)?))? ?(?<system>BSPP|BSPT|BSP|NPTF|NPT|PT|PF|PS)$/i,
  unified:
    /^(?<size>(?:#|No\.? ?)?[0-9]{1,2}(?:[ -][0-9]{1,2}\/[0-9]{1,2}|\/[0-9]{1,2})?) ?- ?(?<per>[0-9]{1,2})(?: ?(?<series>UNC|UNF|UNEF|UN))?(?: ?-? ?(?<fit>[123][AB]))?$/i,
} as const
