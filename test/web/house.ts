import { createApp } from '../../src/web/app.ts'

/** The program's pages, shared by the files of tests, so that what is worked out for one page serves the next. */
export const house = createApp()
