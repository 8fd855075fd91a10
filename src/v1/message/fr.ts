export { fr, frCalculations } from '../../message/fr/index.js'
