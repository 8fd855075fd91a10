export { en, enCalculations } from '../../message/en/index.js'
