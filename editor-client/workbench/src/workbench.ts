/** The workbench: wires the paper, the bench and the findings to the server, once. */

import { nameOfWindow, Drafts } from './drafts';
import { Desk } from './desk';
import { Lamp } from './lamp';
import { Refusal, listFiles } from './api';
import { byId } from './dom';
import { Notices } from './notices';

async function begin(): Promise<void> {
  const notices = new Notices(byId('notices'));
  const lamp = new Lamp(byId('theme'));
  try {
    const [folder, window] = await Promise.all([listFiles(), nameOfWindow()]);
    const desk = new Desk(folder, new Drafts(localStorage, window), notices, lamp);
    await desk.begin();
  } catch (failure) {
    notices.tell(
      'begin',
      failure instanceof Refusal
        ? failure.message
        : `The workbench did not start: ${String(failure)}`,
    );
  }
}

void begin();
