namespace Stilewright.Teaching.Checking;

/// <summary>Best assignment of rows to columns: each row gets one column of its own, the sum of costs is least.</summary>
/// <remarks>Shortest augmenting paths with potentials; R. Jonker, A. Volgenant, "A shortest augmenting path algorithm for
/// dense and sparse linear assignment problems", Computing 38 (1987).</remarks>
internal static class Assignment
{
    /// <summary>The column of each row.</summary>
    /// <param name="cost">Rows × columns, finite; no more rows than columns.</param>
    /// <exception cref="ArgumentException">There are more rows than columns.</exception>
    public static int[] Solve(double[,] cost)
    {
        var (rows, columns) = (cost.GetLength(0), cost.GetLength(1));
        if (rows > columns)
            throw new ArgumentException("Each row needs a column of its own.", nameof(cost));
        // Rows and columns from 1; column 0 holds the row that looks for one.
        var (ofRow, ofColumn) = (new double[rows + 1], new double[columns + 1]);
        var rowAt = new int[columns + 1];
        for (var row = 1; row <= rows; row++)
        {
            rowAt[0] = row;
            var before = new int[columns + 1];
            var least = new double[columns + 1];
            Array.Fill(least, double.PositiveInfinity);
            var used = new bool[columns + 1];
            var column = 0;
            do
            {
                used[column] = true;
                var (current, delta, next) = (rowAt[column], double.PositiveInfinity, 0);
                for (var j = 1; j <= columns; j++)
                {
                    if (used[j])
                        continue;
                    var reduced = cost[current - 1, j - 1] - ofRow[current] - ofColumn[j];
                    if (reduced < least[j])
                        (least[j], before[j]) = (reduced, column);
                    if (least[j] < delta)
                        (delta, next) = (least[j], j);
                }

                for (var j = 0; j <= columns; j++)
                {
                    if (used[j])
                    {
                        ofRow[rowAt[j]] += delta;
                        ofColumn[j] -= delta;
                    }
                    else
                    {
                        least[j] -= delta;
                    }
                }

                column = next;
            }
            while (rowAt[column] != 0);
            for (; column != 0; column = before[column])
                rowAt[column] = rowAt[before[column]];
        }

        var columnOf = new int[rows];
        for (var j = 1; j <= columns; j++)
        {
            if (rowAt[j] != 0)
                columnOf[rowAt[j] - 1] = j - 1;
        }

        return columnOf;
    }
}
