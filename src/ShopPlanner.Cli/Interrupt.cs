using System.Runtime.InteropServices;

namespace ShopPlanner.Cli;

/// <summary>Turns the first Ctrl-C, or the system's request to end, into a stop of the search; a second one ends the
/// program.</summary>
internal sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] signals;

    public Interrupt() =>
        signals = [
            PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop),
            PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop),
        ];

    public CancellationToken Token => source.Token;

    public void Dispose()
    {
        foreach (var signal in signals)
            signal.Dispose();
        source.Dispose();
    }

    private void Stop(PosixSignalContext context)
    {
        context.Cancel = !source.IsCancellationRequested;
        source.Cancel();
    }
}
