export { en } from '../../message/en/index.js'
