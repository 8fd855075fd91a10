export * from '../../quantity/unitCodes/index.js'
