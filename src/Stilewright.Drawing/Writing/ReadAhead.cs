using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Stilewright.Drawing.Writing;

/// <summary>Takes items from a sequence on another thread, a few ahead of the reader: a page is laid out while the one before it is written.</summary>
internal static class ReadAhead
{
    /// <summary>The same items in the same order; what the sequence throws is thrown where its item would have come.</summary>
    /// <param name="most">How many items are held at most.</param>
    public static IEnumerable<T> Of<T>(IEnumerable<T> source, int most)
    {
        using var held = new BlockingCollection<T>(most);
        using var stop = new CancellationTokenSource();
        ExceptionDispatchInfo? fault = null;
        void Take()
        {
            try
            {
                foreach (var item in source)
                    held.Add(item, stop.Token);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                // The reader has left.
            }
            catch (Exception thrown)
            {
                fault = ExceptionDispatchInfo.Capture(thrown);
            }
            finally
            {
                held.CompleteAdding();
            }
        }

        // A thread of its own: where many documents are written at once, readers that wait hold all threads of the pool.
        var taking = Task.Factory.StartNew(Take, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        try
        {
            foreach (var item in held.GetConsumingEnumerable())
                yield return item;
            fault?.Throw();
        }
        finally
        {
            stop.Cancel();
            taking.Wait();
        }
    }
}
