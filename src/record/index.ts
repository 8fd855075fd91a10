// The functions that other rooms import.
export { checkRecord } from './checkRecord.js'
