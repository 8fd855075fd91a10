// Commands that answer one question without a document. They are bundled as one file, without zod and yaml.
export { enCalculations } from '../../message/en/index.js'
export { runConvert } from './runConvert.js'
export { runDueQuestion } from './runDueQuestion.js'
export { runFill } from './runFill.js'
export { runMeets } from './runMeets.js'
export { runPour } from './runPour.js'
export { runTorque } from './runTorque.js'
export { runWasher } from './runWasher.js'
