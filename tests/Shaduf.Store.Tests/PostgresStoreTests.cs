using Npgsql;

namespace Shaduf.Store.Tests;

/// <summary>The same on a PostgreSQL server, which the variable names; skipped where there is none.</summary>
public sealed class PostgresStoreTests : StoreTests, IDisposable
{
    private const string Variable = "SHADUF_TEST_POSTGRES";

    private readonly List<string> made = [];

    private static string? Server => Environment.GetEnvironmentVariable(Variable);

    public void Dispose()
    {
        NpgsqlConnection.ClearAllPools();
        foreach (var database in made)
        {
            Do($"DROP DATABASE IF EXISTS \"{database}\" WITH (FORCE)");
        }
    }

    protected override StoreSetting Fresh()
    {
        Assert.SkipWhen(Server is null, $"no PostgreSQL server: {Variable} names none");
        var database = $"shaduf_{Guid.NewGuid():N}";
        Do($"CREATE DATABASE \"{database}\"");
        made.Add(database);
        return StoreSetting.Of(new NpgsqlConnectionStringBuilder(Server) { Database = database }.ConnectionString);
    }

    [Fact]
    public async Task A_server_that_does_not_answer_is_told()
    {
        var told = await Assert.ThrowsAsync<StoreException>(() =>
            StationStore.OpenAsync(
                StoreSetting.Of("Host=127.0.0.1;Port=9;Database=shaduf;Username=nobody;Timeout=2"),
                TimeProvider.System,
                TestContext.Current.CancellationToken
            )
        );
        Assert.Contains("does not answer", told.Message, StringComparison.Ordinal);
    }

    private static void Do(string sql)
    {
        using var connection = new NpgsqlConnection(Server);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
