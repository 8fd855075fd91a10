#!/usr/bin/env node
import { makeNodeIo } from './makeNodeIo.js'
import { runCommand } from './runCommand.js'

// A reader that stops early, such as `head`, is not an error.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? 0 : 2)
  })

void runCommand(process.argv.slice(2), makeNodeIo()).then((code) => {
  process.exitCode = code
})
