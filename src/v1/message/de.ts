export { de, deCalculations } from '../../message/de/index.js'
