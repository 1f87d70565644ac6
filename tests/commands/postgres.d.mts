export interface PostgresServer {
  readonly port: number;
  readonly address: string;
  readonly start: () => void;
  readonly crash: () => void;
  readonly stop: () => void;
  readonly standBy: () => Promise<PostgresServer>;
  readonly promote: () => void;
}

export function findPostgres(): Promise<string>;
export function startPostgres(): Promise<PostgresServer>;
