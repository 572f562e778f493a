import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sheetLinks } from '../../kernel-helpers/src/record/sheets.js';
import { testFolder, writeSheet } from './setting.js';

describe('how sheets hang together', () => {
  it('is read off the calls in their code cells', () => {
    const folder = testFolder();
    writeSheet(
      folder,
      '04-lid.ipynb',
      'const sizing = job.need(\'sizing\');\nconst brief = job.need( "brief" );',
      'job.need(`sizing`);\nconst air = job.find("air");\nparts.find((part) => part);\njob.decide(\n  "lid",\n  { inputs },\n);',
    );
    writeSheet(folder, '01-brief.ipynb', "job.decide('brief', {})");
    expect(sheetLinks(folder)).toEqual([
      { file: '01-brief.ipynb', needs: [], finds: [], decides: ['brief'], looksBack: false },
      { file: '04-lid.ipynb', needs: ['sizing', 'brief'], finds: ['air'], decides: ['lid'], looksBack: false },
    ]);
  });

  it('tells which of them look at the record as a whole', () => {
    const folder = testFolder();
    writeSheet(folder, '10-days.ipynb', 'table(job.decisions())');
    writeSheet(folder, '11-closing.ipynb', "job.need('days').decisions.length; // job.head()");
    expect(sheetLinks(folder).map(({ looksBack }) => looksBack)).toEqual([true, false]);
  });

  it('leaves out comments, prose and files that are no notebooks', () => {
    const folder = testFolder();
    writeSheet(
      folder,
      '01-brief.ipynb',
      "// job.need('quote')\n/* job.need('lid') */ const url = 'https://example.org';",
    );
    const prose = { cell_type: 'markdown', source: "`job.need('sizing')` gives the sizes" };
    writeFileSync(join(folder, '02-prose.ipynb'), JSON.stringify({ cells: [prose] }));
    writeFileSync(join(folder, '03-torn.ipynb'), '{"cells": [');
    writeFileSync(join(folder, 'notes.txt'), "job.need('brief')");
    expect(sheetLinks(folder)).toEqual(
      ['01-brief.ipynb', '02-prose.ipynb', '03-torn.ipynb'].map((file) => ({
        file,
        needs: [],
        finds: [],
        decides: [],
        looksBack: false,
      })),
    );
  });
});
