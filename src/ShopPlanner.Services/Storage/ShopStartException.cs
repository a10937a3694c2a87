namespace ShopPlanner.Services.Storage;

/// <summary>The shop cannot be opened. The message is one line for the person who started the program: what, where, what to
/// do.</summary>
public sealed class ShopStartException : Exception
{
    /// <summary>Says why.</summary>
    public ShopStartException(string message)
        : base(message) { }

    /// <summary>Says why, keeping what the system said.</summary>
    public ShopStartException(string message, Exception inner)
        : base(message, inner) { }

    /// <summary>For tools that make exceptions; say why instead.</summary>
    public ShopStartException()
        : this("The shop cannot be opened.") { }
}
