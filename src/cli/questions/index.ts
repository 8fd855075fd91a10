// Commands that answer one question without a document. They are bundled as one file, without zod and yaml.
export { runConvert } from './runConvert.js'
