/** The WebSocket to the language server, which comes back by itself when it was lost. */

import type { Transport } from '@codemirror/lsp-client';

/** What the server may ask of this client, and how it is answered. */
export type Answerer = (method: string, params: unknown) => unknown;

export interface LinkEvents {
  /** A fresh connection, over which a session is to be begun. */
  connected(transport: Transport): void;
  /** The connection is gone; `seconds` tells when the next one is tried. */
  lost(seconds: number): void;
  answer: Answerer;
}

const FIRST_WAIT = 500;
const LONGEST_WAIT = 8000;

export class Link {
  private socket: WebSocket | undefined;
  private wait = FIRST_WAIT;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private ended = false;

  constructor(private readonly events: LinkEvents) {}

  open(): void {
    clearTimeout(this.timer);
    const socket = new WebSocket(`ws://${location.host}/language`);
    this.socket = socket;
    const transport = transportOf(socket, this.events.answer);
    socket.addEventListener('open', () => {
      this.wait = FIRST_WAIT;
      this.events.connected(transport);
    });
    socket.addEventListener('close', () => {
      this.again(socket);
    });
  }

  /** Tries at once, where waiting makes no sense any more. */
  hurry(): void {
    if (this.socket?.readyState === WebSocket.CLOSED && !this.ended) {
      this.open();
    }
  }

  end(): void {
    this.ended = true;
    clearTimeout(this.timer);
    this.socket?.close();
  }

  private again(socket: WebSocket): void {
    if (socket !== this.socket || this.ended) {
      return;
    }
    this.events.lost(this.wait / 1000);
    this.timer = setTimeout(() => {
      this.open();
    }, this.wait);
    this.wait = Math.min(LONGEST_WAIT, this.wait * 2);
  }
}

/** The client takes answers and notifications; what the server asks is answered here. */
function transportOf(socket: WebSocket, answer: Answerer): Transport {
  const handlers = new Set<(message: string) => void>();
  socket.addEventListener('message', ({ data }) => {
    if (typeof data !== 'string') {
      return;
    }
    const asked = requestIn(data);
    if (asked === undefined) {
      handlers.forEach((handler) => {
        handler(data);
      });
    } else {
      void reply(socket, asked, answer);
    }
  });
  return {
    send(message) {
      if (socket.readyState !== WebSocket.OPEN) {
        throw new Error('the server is away');
      }
      socket.send(message);
    },
    subscribe: (handler) => handlers.add(handler),
    unsubscribe: (handler) => handlers.delete(handler),
  };
}

interface Asked {
  readonly id: unknown;
  readonly method: string;
  readonly params: unknown;
}

function requestIn(message: string): Asked | undefined {
  const value = JSON.parse(message) as Record<string, unknown>;
  return 'id' in value && typeof value['method'] === 'string'
    ? { id: value['id'], method: value['method'], params: value['params'] }
    : undefined;
}

async function reply(
  socket: WebSocket,
  { id, method, params }: Asked,
  answer: Answerer,
): Promise<void> {
  const told = await settled(() => answer(method, params));
  if (socket.readyState === WebSocket.OPEN) {
    socket.send(JSON.stringify({ jsonrpc: '2.0', id, ...told }));
  }
}

async function settled(work: () => unknown): Promise<object> {
  try {
    const result = await work();
    return result === undefined
      ? { error: { code: -32601, message: 'not known here' } }
      : { result };
  } catch (failure) {
    return { error: { code: -32803, message: String(failure) } };
  }
}
