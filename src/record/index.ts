// What other rooms may use of this one.
export { checkRecord } from './checkRecord.js'
