using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Npgsql;

namespace Shaduf.Store;

/// <summary>Where the stations are kept.</summary>
/// <param name="File">The SQLite file; null when a PostgreSQL database keeps them.</param>
/// <param name="Database">The PostgreSQL connection; null when a file keeps them.</param>
public sealed record StoreSetting(string? File, string? Database)
{
    /// <summary>The one setting that moves the store: an environment variable.</summary>
    public const string Variable = "SHADUF_STORE";

    /// <summary>Reads the setting.</summary>
    /// <param name="text">
    /// Null or empty for a file in the user's data folder; a path for a file elsewhere; a connection such as
    /// <c>Host=127.0.0.1;Database=shaduf;Username=...</c> for PostgreSQL.
    /// </param>
    /// <returns>The setting.</returns>
    /// <exception cref="StoreException">The text is a connection that cannot be read.</exception>
    public static StoreSetting Of(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return new(Path.Combine(DataFolder(), "stations.db"), null);
        }

        if (!text.Contains('='))
        {
            return new(Path.GetFullPath(text), null);
        }

        try
        {
            return new(null, new NpgsqlConnectionStringBuilder(text).ConnectionString);
        }
        catch (ArgumentException trouble)
        {
            throw new StoreException(
                $"{Variable} is neither a path nor a PostgreSQL connection: {trouble.Message}",
                trouble
            );
        }
    }

    /// <summary>Opens the tables.</summary>
    internal StoreContext Open() =>
        File is not null ? new SqliteContext(Sqlite(File)) : new PostgresContext(Postgres(Database!));

    private static string DataFolder() =>
        Path.Combine(
            Environment.GetFolderPath(
                Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.DoNotVerify
            ),
            "shaduf"
        );

    private static DbContextOptions<SqliteContext> Sqlite(string file) =>
        new DbContextOptionsBuilder<SqliteContext>()
            .UseSqlite(
                new SqliteConnectionStringBuilder
                {
                    DataSource = file,
                    ForeignKeys = true,
                    DefaultTimeout = 30,
                }.ConnectionString
            )
            .Options;

    private static DbContextOptions<PostgresContext> Postgres(string connection) =>
        new DbContextOptionsBuilder<PostgresContext>().UseNpgsql(connection).Options;

    // The tool that writes migrations opens the tables through these; no database is touched.
    private sealed class SqliteDesign : IDesignTimeDbContextFactory<SqliteContext>
    {
        public SqliteContext CreateDbContext(string[] args) => new(Sqlite("design.db"));
    }

    private sealed class PostgresDesign : IDesignTimeDbContextFactory<PostgresContext>
    {
        public PostgresContext CreateDbContext(string[] args) => new(Postgres("Host=none"));
    }
}
