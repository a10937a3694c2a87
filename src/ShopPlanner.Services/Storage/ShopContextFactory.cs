using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace ShopPlanner.Services.Storage;

/// <summary>Makes contexts on the database that holds the shop, whichever keeps it: a file or a server.</summary>
internal abstract class ShopContextFactory : IDbContextFactory<ShopContext>
{
    /// <summary>Whether nothing can be written.</summary>
    public bool IsReadOnly { get; protected set; }

    /// <summary>What a person calls the database: a path, or a server and a name.</summary>
    public abstract string Name { get; }

    /// <summary>Whether a database of an older schema can be copied before it is changed. A server changes its schema in one
    /// transaction, and is backed up by its own means.</summary>
    public abstract bool CanCopyOlder { get; }

    /// <inheritdoc />
    public abstract ShopContext CreateDbContext();

    /// <summary>Makes contexts that only read from here on.</summary>
    public abstract void OnlyRead();

    /// <summary>Lets go of what is kept open for the next operation.</summary>
    public abstract void Release();

    /// <summary>Begins to read one state of the database, which writers do not wait for.</summary>
    public abstract Task<IDbContextTransaction> BeginReadAsync(ShopContext db, CancellationToken cancel);

    /// <summary>Begins a change, once no other is under way: what is read from then on nobody else changes.</summary>
    public abstract Task<IDbContextTransaction> BeginWriteAsync(ShopContext db, CancellationToken cancel);

    /// <summary>Ends what a program that was killed while it brought the schema up to date left behind.</summary>
    public abstract Task ClearAbandonedAsync(ShopContext db, CancellationToken cancel);
}
