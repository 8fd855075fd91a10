export * from './v1.js'
