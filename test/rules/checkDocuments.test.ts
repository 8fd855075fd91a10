import { describe, expect, it } from 'vitest'
import { checkDocuments } from '../../src/rules/index.js'
import { goodFolders, readFolder, setOf } from './support/goodSets.js'

describe('good examples', () => {
  it.each(goodFolders())('%s has nothing to mend', (folder) => {
    expect(checkDocuments(setOf(readFolder(folder)), { today: '2031-11-02' })).toEqual([])
  })
})
