using System.Net.Sockets;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Shaduf.Store;

/// <summary>What a database's complaint means for the person at the screen.</summary>
internal static class StoreTrouble
{
    private const int SqliteBusy = 5;
    private const int SqliteReadOnly = 8;
    private const int SqliteInputOutput = 10;
    private const int SqliteCorrupt = 11;
    private const int SqliteFull = 13;
    private const int SqliteCannotOpen = 14;
    private const int SqliteConstraint = 19;
    private const int SqliteNotADatabase = 26;

    /// <summary>One sentence; null for what is the program's own fault.</summary>
    public static string? Of(Exception trouble) =>
        trouble switch
        {
            DbUpdateException { InnerException: { } inner } => Of(inner),
            SqliteException sqlite => OfSqlite(sqlite),
            PostgresException { SqlState: PostgresErrorCodes.DiskFull } =>
                "The database's disk is full: make room; what was confirmed is kept.",
            PostgresException { SqlState: "28P01" or "28000" or "3D000" or "42501" } refused =>
                $"The database refuses: {refused.MessageText}.",
            NpgsqlException { InnerException: SocketException or TimeoutException } =>
                "The database does not answer: is it running, and is the setting right?",
            InvalidOperationException { InnerException: NpgsqlException inner } => Of(inner),
            UnauthorizedAccessException or IOException => $"The store cannot be written: {trouble.Message}",
            _ => null,
        };

    /// <summary>Whether a row was refused because its number is taken.</summary>
    public static bool IsTaken(DbUpdateException trouble) =>
        trouble.InnerException
            is SqliteException { SqliteErrorCode: SqliteConstraint }
                or PostgresException { SqlState: PostgresErrorCodes.UniqueViolation };

    private static string? OfSqlite(SqliteException trouble) =>
        trouble.SqliteErrorCode switch
        {
            SqliteFull => "The disk is full: make room; what was confirmed is kept.",
            SqliteReadOnly or SqliteCannotOpen => "The store's file or its folder may not be written.",
            SqliteInputOutput => "The store's file cannot be read or written: is its disk sound, and not full?",
            SqliteBusy => "The store is busy: another program holds it. Try again.",
            SqliteCorrupt or SqliteNotADatabase =>
                "The store's file is damaged or is no store: a copy from the folder 'backups' beside it can take its place.",
            _ => null,
        };
}
