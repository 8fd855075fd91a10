export { es, esCalculations } from '../../message/es/index.js'
