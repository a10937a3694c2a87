using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopPlanner.Services.Storage;

/// <summary>Sets on every opened connection what the shop relies on; SQLite forgets most of it with the connection.</summary>
internal sealed class PragmaInterceptor : DbConnectionInterceptor
{
    // Write-ahead logging is a mark in the file itself and set when it is opened as a whole: some connections here only read.
    // FULL: what was acknowledged survives a power cut too. trusted_schema off: a tampered file runs no functions of ours.
    internal const string Pragmas =
        "PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; "
        + "PRAGMA cell_size_check = ON; PRAGMA busy_timeout = 5000;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
