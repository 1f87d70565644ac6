export interface Where {
  readonly port: number;
  readonly host: string;
  /** Beside the environment of this process. */
  readonly env?: Readonly<Record<string, string>>;
}

export interface RunningServer {
  readonly address: string;
  /** Kept when the server has ended. */
  readonly ended: Promise<unknown>;
  readonly stop: () => Promise<void>;
  readonly kill: () => void;
}

/** The program of the built site. Takes a host and a port. */
export const SERVER: string;

export function startServer(where: Where): Promise<RunningServer>;
