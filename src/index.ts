export * from './v1/index.js'
