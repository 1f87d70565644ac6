export interface PostgresServer {
  readonly address: string;
  readonly start: () => void;
  readonly crash: () => void;
  readonly stop: () => void;
}

export function findPostgres(): Promise<string>;
export function startPostgres(): Promise<PostgresServer>;
